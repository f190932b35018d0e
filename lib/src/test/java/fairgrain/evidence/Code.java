package fairgrain.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The classes of the library and of its tests, as they stand in their files. */
final class Code {
    private static final Path MAIN = Path.of("src/main/java");
    private static final Path TESTS = Path.of("src/test/java");

    private Code() {}

    /** The text of each class of the library. */
    static Map<Class<?>, String> classes() {
        Map<Class<?>, String> texts = new LinkedHashMap<>();
        files(MAIN).stream()
                .filter(file -> !simple(file).equals("package-info"))
                .forEach(file -> texts.put(load(file), read(file)));
        return texts;
    }

    static List<TestFile> tests() {
        return files(TESTS).stream()
                .map(file -> new TestFile(simple(file), read(file)))
                .toList();
    }

    private static Class<?> load(Path file) {
        String path = MAIN.relativize(file).toString();
        String name = path.substring(0, path.length() - ".java".length())
                .replace('\\', '.')
                .replace('/', '.');
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(name, e);
        }
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String simple(Path file) {
        return file.getFileName().toString().replace(".java", "");
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
