package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.quantity.Length;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The table of {@code docs/release.md} names what the program ships, in which version and under which licence. What is
 * shipped is read from our own poms and, from there on, from the poms that lie beside the jars these tests run with.
 */
class LicenceTableTest {
    private static final Path PAGE = Path.of("..", "docs", "release.md");
    private static final Path LIBRARY = Path.of("..", "lib", "pom.xml");
    private static final Pattern ROW = Pattern.compile("\\| ([a-z0-9-]+)[^|]* \\| ([0-9.]+) \\| ([^|]+) \\|");
    private static final String APACHE = "Apache-2.0";

    /** One row: what is shipped. */
    private record Shipped(String name, String version, String licence) {}

    private static List<Shipped> told() throws IOException {
        return ROW.matcher(Files.readString(PAGE))
                .results()
                .map(row -> new Shipped(row.group(1), row.group(2), row.group(3)))
                .toList();
    }

    private static Map<String, Pom> shipped() throws IOException {
        return shipped(LIBRARY, Path.of("pom.xml"));
    }

    /** What our poms ask for, and what those ask for in turn, with the pom of each. */
    private static Map<String, Pom> shipped(Path... ours) throws IOException {
        Deque<Dependency> asked = new ArrayDeque<>();
        for (Path pom : ours) {
            asked.addAll(Pom.read(pom).shippedDependencies());
        }
        Map<String, Pom> found = new TreeMap<>();
        while (!asked.isEmpty()) {
            Dependency next = asked.remove();
            if (next.group().equals("fairgrain") || found.containsKey(next.artifact())) {
                continue;
            }
            Pom pom = Pom.read(pomBeside(jarOf(next)));
            found.put(next.artifact(), pom);
            asked.addAll(pom.shippedDependencies());
        }
        return found;
    }

    /** The first such jar on the class path, which is the one that is used: its folder in the repository tells the version. */
    private static Path jarOf(Dependency of) {
        String place = "/" + of.group().replace('.', '/') + "/" + of.artifact() + "/";
        return classPath().stream()
                .filter(path -> path.toString().replace('\\', '/').contains(place))
                .findFirst()
                .orElseThrow(() -> new AssertionError(of.artifact() + " is not on the class path"));
    }

    private static List<Path> classPath() {
        List<Path> all = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(Pattern.quote(File.pathSeparator), -1)) {
            all.add(Path.of(entry));
        }
        return all;
    }

    private static Path pomBeside(Path jar) {
        return jar.resolveSibling(jar.getFileName().toString().replaceFirst("\\.jar$", ".pom"));
    }

    @Test
    void theTableNamesWhatIsShippedAndNothingElse() throws IOException {
        List<Shipped> expected = new ArrayList<>();
        for (Map.Entry<String, Pom> entry : shipped().entrySet()) {
            Pom pom = entry.getValue();
            expected.add(new Shipped(entry.getKey(), pom.version(), pom.licence()));
        }
        assertThat(expected).hasSizeGreaterThan(3);
        assertThat(told()).containsExactlyInAnyOrderElementsOf(expected);
    }

    @Test
    void theLibraryAsksForTheFirstSevenRows() throws IOException {
        assertThat(told().subList(0, 7))
                .extracting(Shipped::name)
                .containsExactlyInAnyOrderElementsOf(shipped(LIBRARY).keySet());
    }

    @Test
    void allOfItMayBeUsedUnderTheLicenceOfTheProject() throws IOException {
        assertThat(told())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.licence()).isEqualTo(APACHE));
        assertThat(Pom.read(Path.of("..", "pom.xml")).licence()).isEqualTo(APACHE);
    }

    /** The program jar carries our text of the licence, and the text of the one library that adds licences of others to it. */
    @Test
    void onlyOneLibraryAddsLicencesOfOthersToItsOwn() throws IOException {
        String ours = words(Files.readString(Path.of("..", "LICENSE")));
        List<String> adding = new ArrayList<>();
        for (Map.Entry<String, Pom> entry : shipped().entrySet()) {
            Path pom = entry.getValue().file();
            Path jar = pom.resolveSibling(pom.getFileName().toString().replaceFirst("\\.pom$", ".jar"));
            String text = licenceIn(jar);
            if (!text.isEmpty() && !words(text).equals(ours)) {
                adding.add(entry.getKey());
            }
        }
        assertThat(adding).containsExactly("commons-math3");
        String leftOut = Files.readString(Path.of("pom.xml"));
        assertThat(leftOut).doesNotContain("ApacheLicenseResourceTransformer");
        assertThat(leftOut).doesNotContain("<artifact>org.apache.commons:commons-math3</artifact>");
    }

    /** Every jar of ours, and with them the program, gets the licence from the top of the project. */
    @Test
    void theLicenceIsAResourceOfBothModules() throws IOException {
        String ours = Files.readString(Path.of("..", "LICENSE"));
        List<String> resources = new ArrayList<>();
        for (URL url : Collections.list(Fairgrain.class.getClassLoader().getResources("META-INF/LICENSE"))) {
            try (InputStream in = url.openStream()) {
                if (new String(in.readAllBytes(), StandardCharsets.UTF_8).equals(ours)) {
                    resources.add(url.toString());
                }
            }
        }
        for (Class<?> one : List.of(Fairgrain.class, Length.class)) {
            String module =
                    one.getProtectionDomain().getCodeSource().getLocation().getPath();
            assertThat(resources).anySatisfy(url -> assertThat(url).contains(module));
        }
    }

    private static String licenceIn(Path jar) throws IOException {
        try (JarFile file = new JarFile(jar.toFile())) {
            var entry = file.getEntry("META-INF/LICENSE.txt");
            return entry == null ? "" : new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** The words alone: blanks, line ends and how an address begins are of no weight. */
    private static String words(String text) {
        return text.replace("https://", "http://").replaceAll("\\s+", " ").strip();
    }

    private record Dependency(String group, String artifact) {}

    /** As much of a pom as is asked here. */
    private record Pom(Path file, String text) {
        private static final Pattern PARENT = Pattern.compile("<parent>(.*?)</parent>", Pattern.DOTALL);
        private static final Pattern LICENCE = Pattern.compile("<license>(.*?)</license>", Pattern.DOTALL);
        private static final Pattern DEPENDENCY = Pattern.compile("<dependency>(.*?)</dependency>", Pattern.DOTALL);

        static Pom read(Path file) throws IOException {
            return new Pom(file, Files.readString(file).replaceAll("(?s)<!--.*?-->", ""));
        }

        /** Named by the folder it lies in: a repository keeps each version in a folder of its own. */
        String version() {
            return String.valueOf(above(file).getFileName());
        }

        /** Dependencies of the project itself that are there when it runs: not those of its tests, its profiles or its plugins. */
        List<Dependency> shippedDependencies() {
            String own = text.replaceAll("(?s)<dependencyManagement>.*?</dependencyManagement>", "")
                    .replaceAll("(?s)<build>.*?</build>", "")
                    .replaceAll("(?s)<profiles>.*?</profiles>", "")
                    .replaceAll("(?s)<exclusions>.*?</exclusions>", "");
            return DEPENDENCY
                    .matcher(own)
                    .results()
                    .map(MatchResult::group)
                    .filter(one -> !one.contains("<scope>test</scope>")
                            && !one.contains("<scope>provided</scope>")
                            && !one.contains("<optional>true</optional>"))
                    .map(one -> new Dependency(inner(one, "groupId"), inner(one, "artifactId")))
                    .toList();
        }

        /** Its own licence, or that of the nearest parent that names one. */
        String licence() throws IOException {
            Matcher own = LICENCE.matcher(text);
            if (own.find()) {
                String name = inner(own.group(1), "name") + " " + inner(own.group(1), "url");
                assertThat(name)
                        .as("licence in %s", file)
                        .containsIgnoringCase("apache")
                        .contains("2.0");
                assertThat(own.find()).as("a second licence in %s", file).isFalse();
                return APACHE;
            }
            return parent().licence();
        }

        private Pom parent() throws IOException {
            Matcher matcher = PARENT.matcher(text);
            assertThat(matcher.find())
                    .as("%s names a licence or a parent", file)
                    .isTrue();
            String artifact = inner(matcher.group(1), "artifactId");
            String version = inner(matcher.group(1), "version");
            return read(repository()
                    .resolve(inner(matcher.group(1), "groupId").replace('.', '/'))
                    .resolve(artifact)
                    .resolve(version)
                    .resolve(artifact + "-" + version + ".pom"));
        }

        /** The top of the repository, as many folders up as the place of this pom has parts. */
        private Path repository() {
            String noParent = PARENT.matcher(text).replaceFirst("");
            String group = noParent.contains("<groupId>")
                            && noParent.indexOf("<groupId>") < firstOf(noParent, "<dependencies>", "<build>")
                    ? inner(noParent, "groupId")
                    : inner(text, "groupId");
            Path top = above(above(file));
            for (int part = 0; part < group.split("\\.", -1).length; part++) {
                top = above(top);
            }
            return above(top);
        }

        private static Path above(Path place) {
            return Objects.requireNonNull(place.toAbsolutePath().getParent(), "a folder lies in no other");
        }

        private static int firstOf(String text, String... tags) {
            int first = text.length();
            for (String tag : tags) {
                int at = text.indexOf(tag);
                first = at < 0 ? first : Math.min(first, at);
            }
            return first;
        }

        private static String inner(String text, String tag) {
            Matcher matcher = Pattern.compile("<" + tag + ">\\s*(.*?)\\s*</" + tag + ">", Pattern.DOTALL)
                    .matcher(text);
            assertThat(matcher.find()).as("<%s> in%n%s", tag, text).isTrue();
            return matcher.group(1);
        }
    }
}
