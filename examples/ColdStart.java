import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Times whole processes by turns, so that whatever else the machine does falls on all of them alike. Run by cold-start. */
final class ColdStart {
    private static final String SAMPLE = "designs/lakeside-book-cupboard.yaml";

    private ColdStart() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        Path here = Path.of(args[0]);
        int runs = Integer.parseInt(args[1]);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String jar = here.resolve("target/fairgrain.jar").toString();
        String archive = here.resolve("target/fairgrain.jsa").toString();
        String design = here.resolve(SAMPLE).toString();
        List<String> quick = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");

        List<List<String>> commands = List.of(
                command(java, quick, List.of("-cp", empty(here).toString(), "Empty")),
                command(java, List.of(), List.of("-jar", jar, "review", design)),
                command(
                        java,
                        quick,
                        List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:disable", "-jar", jar, "review", design)));
        List<String> names = List.of(
                "a program that does nothing",
                "review of a sample, plain java -jar",
                "review of a sample, as started by the script");
        double[][] millis = new double[commands.size()][runs];
        for (int run = -1; run < runs; run++) { // the first of all is not counted
            for (int i = 0; i < commands.size(); i++) {
                double took = time(commands.get(i));
                if (run >= 0) {
                    millis[i][run] = took;
                }
            }
        }
        double nothing = median(millis[0]);
        for (int i = 0; i < names.size(); i++) {
            System.out.println(String.format(
                    Locale.ROOT,
                    "%-44s %5.0f ms, %4.1f times, median of %d",
                    names.get(i),
                    median(millis[i]),
                    median(millis[i]) / nothing,
                    runs));
        }
    }

    private static List<String> command(String java, List<String> options, List<String> rest) {
        List<String> all = new ArrayList<>(List.of(java));
        all.addAll(options);
        all.addAll(rest);
        return all;
    }

    private static Path empty(Path here) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(here.resolve("target/cold-start"));
        Path source = folder.resolve("Empty.java");
        Files.writeString(source, "class Empty { public static void main(String[] args) {} }\n");
        String javac = Path.of(System.getProperty("java.home"), "bin", "javac").toString();
        time(List.of(javac, "-d", folder.toString(), source.toString()));
        return folder;
    }

    private static double time(List<String> command) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.to(new File(nowhere())))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int exit = process.waitFor();
        double millis = (System.nanoTime() - start) / 1e6;
        if (exit != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + exit);
        }
        return millis;
    }

    private static String nowhere() {
        return File.separatorChar == '\\' ? "NUL" : "/dev/null";
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
