package runthrough;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasModifiers.Predicates.modifier;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.constructors;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import runthrough.cli.Main;
import runthrough.handcalc.HandCalculation;
import runthrough.library.PublishedPackages;
import runthrough.scenario.Input;
import umontreal.ssj.rng.RandomStream;
import umontreal.ssj.simevents.Simulator;

/** The structure that every change keeps. A new package is put into the picture here before it compiles into a build. */
class ArchitectureTest {

    /** The packages whose numbers must depend on the scenario and its seed alone. */
    private static final String[] CORE = {
        "runthrough.plant..", "runthrough.simulation..", "runthrough.handcalc..", "runthrough.study.."
    };

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("runthrough");

    @Test
    void importsGoFromTheFrontDoorDownToTheDescribedLine() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("runthrough..")
                .layer("quantity")
                .definedBy("runthrough.quantity..")
                .layer("folder")
                .definedBy("runthrough.folder..")
                .layer("timestudy")
                .definedBy("runthrough.timestudy..")
                .layer("linelog")
                .definedBy("runthrough.linelog..")
                .layer("plant")
                .definedBy("runthrough.plant..")
                .layer("simulation")
                .definedBy("runthrough.simulation..")
                .layer("handcalc")
                .definedBy("runthrough.handcalc..")
                .layer("study")
                .definedBy("runthrough.study..")
                .layer("chart")
                .definedBy("runthrough.chart..")
                .layer("report")
                .definedBy("runthrough.report..")
                .layer("scenario")
                .definedBy("runthrough.scenario..")
                .layer("web")
                .definedBy("runthrough.web..")
                .layer("cli")
                .definedBy("runthrough.cli..")
                .ensureAllClassesAreContainedInArchitecture()
                .whereLayer("quantity")
                .mayNotAccessAnyLayer()
                .whereLayer("folder")
                .mayNotAccessAnyLayer()
                .whereLayer("folder")
                .mayOnlyBeAccessedByLayers("chart", "report", "web", "cli")
                .whereLayer("timestudy")
                .mayNotAccessAnyLayer()
                .whereLayer("linelog")
                .mayNotAccessAnyLayer()
                .whereLayer("plant")
                .mayOnlyAccessLayers("timestudy", "quantity")
                .whereLayer("scenario")
                .mayOnlyAccessLayers("plant", "timestudy", "linelog", "quantity")
                .whereLayer("simulation")
                .mayOnlyAccessLayers("plant", "quantity")
                .whereLayer("handcalc")
                .mayOnlyAccessLayers("plant", "quantity")
                .whereLayer("study")
                .mayOnlyAccessLayers("simulation", "handcalc", "plant", "timestudy", "linelog", "quantity")
                .whereLayer("chart")
                .mayOnlyAccessLayers(
                        "study", "simulation", "handcalc", "plant", "timestudy", "linelog", "quantity", "folder")
                .whereLayer("report")
                .mayOnlyAccessLayers(
                        "folder",
                        "chart",
                        "study",
                        "simulation",
                        "handcalc",
                        "plant",
                        "timestudy",
                        "linelog",
                        "quantity")
                .whereLayer("web")
                .mayOnlyBeAccessedByLayers("cli")
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .check(CLASSES);
    }

    /** Whoever describes something gives few values in a row; a result is a record of as many figures as it has. */
    @Test
    void onlyAResultOrWhatIsShownOfItTakesMoreThanSevenArguments() {
        ArchCondition<JavaConstructor> takeFewArguments = new ArchCondition<>("take at most seven arguments") {
            @Override
            public void check(JavaConstructor made, ConditionEvents events) {
                int arguments = made.getRawParameterTypes().size();
                events.add(new SimpleConditionEvent(
                        made, arguments <= 7, made.getFullName() + " takes " + arguments + " arguments"));
            }
        };
        constructors()
                .that()
                .areDeclaredInClassesThat(not(assignableTo(Record.class)
                        .and(resideInAnyPackage(
                                        "runthrough.simulation.records",
                                        "runthrough.study..",
                                        "runthrough.report..",
                                        "runthrough.chart..",
                                        "runthrough.web..")
                                .or(type(HandCalculation.class))
                                .or(type(Input.class)))))
                .should(takeFewArguments)
                .check(CLASSES);
    }

    /** The rooms of the engine: motion and work do not know each other, and whoever keeps account cannot move the strip. */
    @Test
    void roomsOfTheEngineOpenDownwardsOnly() {
        layeredArchitecture()
                .consideringOnlyDependenciesInAnyPackage("runthrough.simulation..")
                .layer("run")
                .definedBy("runthrough.simulation")
                .layer("motion")
                .definedBy("runthrough.simulation.motion..")
                .layer("work")
                .definedBy("runthrough.simulation.work..")
                .layer("calendar")
                .definedBy("runthrough.simulation.calendar..")
                .layer("random")
                .definedBy("runthrough.simulation.random..")
                .layer("account")
                .definedBy("runthrough.simulation.account..")
                .layer("records")
                .definedBy("runthrough.simulation.records..")
                .ensureAllClassesAreContainedInArchitectureIgnoring(resideOutsideOfPackage("runthrough.simulation.."))
                .whereLayer("records")
                .mayNotAccessAnyLayer()
                .whereLayer("calendar")
                .mayOnlyAccessLayers("records")
                .whereLayer("random")
                .mayOnlyAccessLayers("records")
                .whereLayer("account")
                .mayOnlyAccessLayers("records")
                .whereLayer("motion")
                .mayOnlyAccessLayers("calendar", "random", "account", "records")
                .whereLayer("work")
                .mayOnlyAccessLayers("calendar", "random", "account", "records")
                .whereLayer("motion")
                .mayOnlyBeAccessedByLayers("run")
                .whereLayer("work")
                .mayOnlyBeAccessedByLayers("run")
                .check(CLASSES);
    }

    @Test
    void packagesDoNotImportEachOtherInCircles() {
        slices().matching("runthrough.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    /** Whoever uses the engine as a library gets these packages, the event library, and nothing else. */
    @Test
    void engineNeedsNothingButItselfAndTheEventLibrary() {
        String[] published = PublishedPackages.names().toArray(String[]::new);
        assertThat(published).contains("runthrough.plant", "runthrough.simulation");
        classes()
                .that(resideInAnyPackage(published).or(resideInAPackage("runthrough.simulation..")))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(published)
                        .or(resideInAnyPackage(
                                "runthrough.simulation..", "java..", "umontreal.ssj..", "org.jspecify.annotations")))
                .check(CLASSES);
    }

    @Test
    void whatIsPublishedNamesOnlyWhatIsPublished() {
        String[] published = PublishedPackages.names().toArray(String[]::new);
        DescribedPredicate<JavaClass> hidden = resideInAPackage("runthrough..").and(not(resideInAnyPackage(published)));
        codeUnits()
                .that()
                .areDeclaredInClassesThat(resideInAnyPackage(published).and(modifier(JavaModifier.PUBLIC)))
                .and()
                .arePublic()
                .should(notHaveInTheirSignature(hidden))
                .check(CLASSES);
    }

    private static ArchCondition<JavaCodeUnit> notHaveInTheirSignature(DescribedPredicate<JavaClass> hidden) {
        return new ArchCondition<>("name no hidden type") {
            @Override
            public void check(JavaCodeUnit unit, ConditionEvents events) {
                Stream.concat(
                                unit.getParameterTypes().stream()
                                        .flatMap(type -> type.getAllInvolvedRawTypes().stream()),
                                unit.getReturnType().getAllInvolvedRawTypes().stream())
                        .filter(hidden)
                        .forEach(type -> events.add(
                                SimpleConditionEvent.violated(unit, unit.getFullName() + " names " + type.getName())));
            }
        };
    }

    private static final String[] ROOMS = {
        "verdict", "sizing", "limits", "speeds", "map", "comparison", "sensitivity", "times", "uncertainty", "log"
    };

    /** A document puts several answers together, so it may enter them. */
    @Test
    void roomsOfTheReportDoNotEnterEachOther() {
        for (String room : ROOMS) {
            noClasses()
                    .that()
                    .resideInAPackage("runthrough.report." + room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(Stream.of(ROOMS)
                            .filter(other -> !other.equals(room))
                            .map(other -> "runthrough.report." + other + "..")
                            .toArray(String[]::new))
                    .check(CLASSES);
        }
    }

    @Test
    void writersKnowAnswersAndNoStudy() {
        noClasses()
                .that()
                .resideInAPackage("runthrough.report.write..")
                .should()
                .dependOnClassesThat(resideInAPackage("runthrough.report..")
                        .and(not(resideInAnyPackage("runthrough.report", "runthrough.report.write")))
                        .or(resideInAPackage("runthrough.study..")
                                .and(not(resideInAPackage("runthrough.study.statistics")))))
                .check(CLASSES);
    }

    /** Of the sources, so that a class that is left over from an earlier build does not count. */
    @Test
    void noTwoFilesHaveOneName_testsAndBenchmarksIncluded() throws IOException {
        try (Stream<Path> sources = Files.walk(Path.of("src"))) {
            Map<String, List<Path>> files = sources.filter(
                            file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .collect(Collectors.groupingBy(file -> String.valueOf(file.getFileName())));
            assertThat(files).containsKeys("LineBuilder.java", "ArchitectureTest.java");
            assertThat(files.values()).filteredOn(named -> named.size() > 1).isEmpty();
        }
    }

    @Test
    void noPackageHoldsMoreThanFortyFilesOfItsOwn() {
        Map<String, Long> files = CLASSES.stream()
                .filter(JavaClass::isTopLevelClass)
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
        assertThat(files.keySet().stream().filter(name -> files.getOrDefault(name, 0L) > 40))
                .isEmpty();
    }

    @Test
    void everyPackageIsNullMarkedByItsPackageInfo() {
        assertThat(CLASSES)
                .extracting(type -> type.getPackage())
                .allMatch(aPackage -> aPackage.isAnnotatedWith(NullMarked.class));
    }

    @Test
    void packagesAreNamedAfterTheTrade() {
        noClasses()
                .should()
                .resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..")
                .check(CLASSES);
    }

    @Test
    void staticFieldsAreConstants() {
        fields().that().areStatic().should().beFinal().check(CLASSES);
    }

    @Test
    void staticFieldsHoldNothingThatDrawsOrCounts() {
        noFields()
                .that()
                .areStatic()
                .should()
                .haveRawType(assignableTo(RandomStream.class)
                        .or(assignableTo(RandomGenerator.class))
                        .or(assignableTo(Simulator.class))
                        .or(resideInAPackage("java.util.concurrent.atomic")))
                .because("one run holds its clock and its calendar, and random numbers have no state")
                .check(CLASSES);
    }

    @Test
    void noStreamOfRandomNumbersIsMade() {
        noClasses()
                .should()
                .dependOnClassesThat(assignableTo(RandomStream.class))
                .because("random numbers belong to what they are for, and come from simulation.random")
                .check(CLASSES);
    }

    @Test
    void onlyMainEndsTheVirtualMachine() {
        noClasses()
                .that(not(type(Main.class)))
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(CLASSES);
    }

    @Test
    void onlyTheCommandLinePrints() {
        noClasses()
                .that()
                .resideOutsideOfPackage("runthrough.cli..")
                .should(ACCESS_STANDARD_STREAMS)
                .check(CLASSES);
    }

    @Test
    void theCoreDrawsItsOwnRandomNumbersOnlyAndReadsNoClock() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE)
                .should()
                .dependOnClassesThat(assignableTo(RandomGenerator.class))
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(Clock.class)
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(Instant.class)
                .because("the same scenario and seed give the same bytes")
                .check(CLASSES);
    }
}
