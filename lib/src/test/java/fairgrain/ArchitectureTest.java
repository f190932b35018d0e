package fairgrain;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.io.InputStream;
import java.io.Reader;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Calendar;
import java.util.Collection;
import java.util.Date;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import org.apache.commons.math3.analysis.solvers.UnivariateSolver;

/** The floors of the library: a package uses only packages below it. */
@AnalyzeClasses(packages = "fairgrain", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<List<String>> FLOORS = List.of(
            List.of("quantity"),
            List.of("finding", "table", "form", "drawing"),
            List.of("moisture", "material", "hygrometer"),
            List.of("place", "part", "movement", "bending", "fastener"),
            List.of("clearance", "fixing", "shelf", "joint", "door", "hanging"),
            List.of("design"),
            List.of("entry", "sheet"));

    private static final List<String> UNCHANGEABLE =
            List.of("java.util.ImmutableCollections", "java.util.Collections$Unmodifiable");

    private static final List<Class<?>> CHANGEABLE = List.of(
            StringBuilder.class,
            Random.class,
            Date.class,
            Calendar.class,
            BitSet.class,
            Iterator.class,
            Matcher.class,
            Reader.class,
            InputStream.class,
            UnivariateSolver.class);

    /**
     * The doors between rooms of a floor: a board knows how its rings turn its movement, a setting where the piece will live, a
     * log what wood settles at in its air, a door how its corners are joined.
     */
    private static final List<String> NEIGHBOURS =
            List.of("part > movement", "part > place", "hygrometer > moisture", "door > joint");

    @ArchTest
    static final ArchRule aPackageUsesOnlyPackagesBelowIt = floors();

    @ArchTest
    static final ArchRule packagesDoNotUseEachOtherInACircle =
            SlicesRuleDefinition.slices().matching("fairgrain.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule theLibraryPrintsNothing = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule onlyWhatABrowserHasToo = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.nio.file..",
                    "java.lang.reflect..",
                    "java.util.concurrent..",
                    "java.text..",
                    "java.net..",
                    "javax..",
                    "sun..");

    /** What the library draws on beside itself. Whatever else is wanted must be added here, and be looked at first. */
    @ArchTest
    static final ArchRule nothingButWhatIsListed = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "fairgrain..",
                    "java.io",
                    "java.lang",
                    "java.lang.annotation",
                    "java.lang.invoke",
                    "java.lang.runtime",
                    "java.math",
                    "java.nio.charset",
                    "java.time",
                    "java.util",
                    "java.util.function",
                    "java.util.regex",
                    "java.util.stream",
                    "org.apache.commons.csv",
                    "org.apache.commons.math3..",
                    "org.apache.commons.rng..",
                    "org.jspecify.annotations",
                    ""); // arrays of numbers

    /** Whether a list or a map that all share can be filled, its type does not tell: so each is looked at. */
    @ArchTest
    static void nothingThatAllShareCanBeChanged(JavaClasses classes) throws ReflectiveOperationException {
        List<String> wrong = new ArrayList<>();
        for (JavaClass one : classes) {
            for (JavaField shared : one.getFields()) {
                if (shared.getModifiers().contains(JavaModifier.STATIC) && canBeChanged(shared)) {
                    wrong.add(shared.getFullName());
                }
            }
        }
        if (!wrong.isEmpty()) {
            throw new AssertionError("all threads share these, and they can be changed: " + wrong);
        }
    }

    private static boolean canBeChanged(JavaField shared) throws ReflectiveOperationException {
        if (!shared.getModifiers().contains(JavaModifier.FINAL)) {
            return true;
        }
        Field field = shared.reflect();
        field.setAccessible(true);
        Object value = field.get(null);
        boolean collection = value instanceof Collection || value instanceof Map;
        String type = value.getClass().getName();
        return collection
                ? UNCHANGEABLE.stream().noneMatch(type::startsWith)
                : CHANGEABLE.stream().anyMatch(kind -> kind.isInstance(value));
    }

    @ArchTest
    static final ArchRule onlyTheLogOfAHygrometerKnowsTheCalendar = noClasses()
            .that()
            .resideOutsideOfPackage("fairgrain.hygrometer..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.time..");

    @ArchTest
    static final ArchRule noFiles = noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.io.File")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.io.FileReader");

    @ArchTest
    static final ArchRule numbersAreWrittenTheSameEverywhere = noClasses()
            .should()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "formatted", Object[].class);

    @ArchTest
    static final ArchRule formulasKnowNothingOfTextOrVerdicts = noClasses()
            .that()
            .resideInAnyPackage(
                    "fairgrain.moisture..", "fairgrain.movement..", "fairgrain.bending..", "fairgrain.fastener..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "fairgrain.table..", "fairgrain.form..")
            .orShould()
            .dependOnClassesThat()
            .haveSimpleName("Verdict");

    private static ArchRule floors() {
        LayeredArchitecture rule = layeredArchitecture().consideringOnlyDependenciesInLayers();
        for (List<String> floor : FLOORS) {
            for (String room : floor) {
                rule = rule.layer(room).definedBy("fairgrain." + room + "..");
            }
        }
        for (int i = 0; i < FLOORS.size(); i++) {
            List<String> above = FLOORS.subList(i + 1, FLOORS.size()).stream()
                    .flatMap(List::stream)
                    .toList();
            for (String room : FLOORS.get(i)) {
                List<String> users = new ArrayList<>(above);
                FLOORS.get(i).stream()
                        .filter(other -> NEIGHBOURS.contains(other + " > " + room))
                        .forEach(users::add);
                rule = users.isEmpty()
                        ? rule.whereLayer(room).mayNotBeAccessedByAnyLayer()
                        : rule.whereLayer(room).mayOnlyBeAccessedByLayers(users.toArray(String[]::new));
            }
        }
        return rule;
    }

    @ArchTest
    static void everyPackageStandsOnAFloor(JavaClasses classes) {
        for (JavaClass one : classes) {
            String room = one.getPackageName().replaceFirst("^fairgrain\\.", "").replaceFirst("\\..*", "");
            if (FLOORS.stream().noneMatch(floor -> floor.contains(room))) {
                throw new AssertionError("the package " + one.getPackageName() + " stands on no floor");
            }
        }
    }
}
