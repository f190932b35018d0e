package fairgrain.program;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * A file that is either written whole or left as it was: written beside, then moved into its place. A link is replaced by the
 * file, and what it led to stays as it was.
 */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] bytes) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new IOException("there is no folder to write " + file + " into");
        }
        if (Files.isDirectory(file)) {
            throw new IOException(file + " is a folder, not a file");
        }
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            Files.write(file, bytes); // a device stays one
        } else {
            beside(file, folder.resolve(".fairgrain-" + UUID.randomUUID() + ".part"), bytes);
        }
    }

    private static void beside(Path file, Path part, byte[] bytes) throws IOException {
        try {
            Files.write(part, bytes, StandardOpenOption.CREATE_NEW);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
