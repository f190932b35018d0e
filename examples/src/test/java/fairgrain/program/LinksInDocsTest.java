package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every link of the pages leads to a file or heading that is there, and the README leads to every page. */
class LinksInDocsTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern LINK = Pattern.compile("\\]\\(([^()\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");

    private static List<Path> pages() throws IOException {
        List<Path> all = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            docs.filter(page -> page.toString().endsWith(".md")).sorted().forEach(all::add);
        }
        return all;
    }

    private static List<String> links(Path page) throws IOException {
        return LINK.matcher(Files.readString(page))
                .results()
                .map(link -> link.group(1))
                .filter(link -> !link.contains("://"))
                .toList();
    }

    private static Path target(Path page, String link) {
        String file = link.replaceFirst("#.*", "");
        return file.isEmpty() ? page : page.resolveSibling(file).normalize();
    }

    /** Headings as a link names them: small letters and digits, hyphens for blanks. */
    private static List<String> headings(Path page) throws IOException {
        return HEADING.matcher(Files.readString(page))
                .results()
                .map((MatchResult heading) -> heading.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} -]", "")
                        .replace(' ', '-'))
                .toList();
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        List<String> dead = new ArrayList<>();
        int tried = 0;
        for (Path page : pages()) {
            for (String link : links(page)) {
                tried++;
                Path target = target(page, link);
                boolean there = Files.exists(target) && target.startsWith(ROOT);
                String heading = link.contains("#") ? link.replaceFirst(".*#", "") : "";
                if (!there || (!heading.isEmpty() && !headings(target).contains(heading))) {
                    dead.add(ROOT.relativize(page) + ": " + link);
                }
            }
        }
        assertThat(dead).isEmpty();
        assertThat(tried).isGreaterThan(50);
    }

    @Test
    void theReadmeLeadsToEveryPage() throws IOException {
        Path readme = ROOT.resolve("README.md");
        List<Path> linked =
                links(readme).stream().map(link -> target(readme, link)).toList();
        assertThat(pages())
                .filteredOn(page -> !page.equals(readme))
                .filteredOn(page -> !linked.contains(page) && !linked.contains(page.getParent()))
                .isEmpty();
    }
}
