package fairgrain;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every formula says its units and where it comes from, and says the same to a reader and to a program. */
class FormulaDocsTest {
    private static final List<String> FORMULA_PACKAGES =
            List.of("moisture", "movement", "bending", "fastener", "joint");
    private static final Pattern FORMULA =
            Pattern.compile("/\\*\\*((?:(?!\\*/).)*)\\*/\\s*public static double \\w+\\(([^)]*)\\)", Pattern.DOTALL);
    private static final Pattern DOUBLE_PARAMETER = Pattern.compile("double (\\w+)");
    private static final Pattern SOURCE_CONSTANT = Pattern.compile(
            "public static final Citation SOURCE\\s*=\\s*Citation\\.of\\(\\s*\"([^\"]+)\",\\s*\"([^\"]*)\"");

    @Test
    void everyNumberOfEveryFormulaSaysItsUnit() throws IOException {
        List<String> silent = new ArrayList<>();
        int formulas = 0;
        for (Path file : sources()) {
            Matcher formula = FORMULA.matcher(Files.readString(file));
            while (formula.find()) {
                formulas++;
                Matcher parameter = DOUBLE_PARAMETER.matcher(formula.group(2));
                while (parameter.find()) {
                    if (!says(formula.group(1), "@param " + parameter.group(1))) {
                        silent.add(file.getFileName() + ": " + parameter.group(1));
                    }
                }
                if (!says(formula.group(1), "@return")) {
                    silent.add(file.getFileName() + ": return value");
                }
            }
        }
        assertThat(formulas).isGreaterThan(50);
        assertThat(silent).isEmpty();
    }

    @Test
    void everyFormulaClassNamesItsSourceTheSameInItsDocsAndInItsConstant() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : sources()) {
            String text = Files.readString(file);
            if (!FORMULA.matcher(text).find() || text.contains("\nfinal class")) {
                continue;
            }
            Matcher constant = SOURCE_CONSTANT.matcher(text);
            String docs = text.replaceAll("\\s*\\n \\* ?", " ");
            if (!constant.find()) {
                wrong.add(file.getFileName() + " has no SOURCE");
            } else if (!docs.contains("<b>Source</b> {@code " + constant.group(1) + "}, " + constant.group(2))) {
                wrong.add(file.getFileName() + ": its Javadoc does not say {@code " + constant.group(1) + "}, "
                        + constant.group(2));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static boolean says(String docs, String tag) {
        return Pattern.compile(tag + "\\b(?:(?!\\* @).)*\\[[^\\]]+\\]", Pattern.DOTALL)
                .matcher(docs)
                .find();
    }

    private static List<Path> sources() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String name : FORMULA_PACKAGES) {
            try (Stream<Path> files = Files.list(Path.of("src/main/java/fairgrain", name))) {
                files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java"))
                        .sorted()
                        .forEach(all::add);
            }
        }
        return all;
    }
}
