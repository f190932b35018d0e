package fairgrain;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.ArrayList;
import java.util.List;

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
