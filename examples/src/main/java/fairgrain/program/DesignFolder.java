package fairgrain.program;

import fairgrain.form.Enclosures;
import fairgrain.quantity.Shown;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * The files beside a design, which it may name. None outside of its folder: a design that came from somebody else must not
 * read what is none of its business.
 */
final class DesignFolder implements Enclosures {
    private static final String PARENT = "..";

    private final Path folder;

    DesignFolder(Path design) {
        Path parent = design.toAbsolutePath().getParent();
        this.folder = parent == null ? design.toAbsolutePath() : parent;
    }

    @Override
    public Reader open(String name) {
        try {
            Path file = Path.of(name);
            if (file.isAbsolute() || name.startsWith("/") || name.startsWith("\\") || name.matches("[A-Za-z]:.*")) {
                throw refused(name, "must lie in the folder of the design: give its name alone, not the way to it");
            }
            for (Path step : file) {
                if (step.toString().equals(PARENT)) {
                    throw refused(name, "must lie in the folder of the design: '..' leads out of it");
                }
            }
            return open(name, folder.resolve(file));
        } catch (InvalidPathException e) {
            throw refused(name, "has a name that no file can have");
        } catch (IOException e) {
            throw refused(name, "cannot be read");
        }
    }

    private Reader open(String name, Path file) throws IOException {
        if (!Files.exists(file)) {
            throw refused(name, "is not in the folder of the design");
        }
        Path real = file.toRealPath();
        if (!real.startsWith(folder.toRealPath())) {
            throw refused(name, "must lie in the folder of the design, but is a link that leads out of it");
        }
        if (!Files.isRegularFile(real)) {
            throw refused(name, "must be a file, not a folder or a device");
        }
        return new InputStreamReader(Files.newInputStream(real), StandardCharsets.UTF_8);
    }

    private static IllegalArgumentException refused(String name, String why) {
        return new IllegalArgumentException("the file " + Shown.quoted(name) + " " + why);
    }
}
