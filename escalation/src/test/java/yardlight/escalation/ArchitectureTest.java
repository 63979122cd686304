package yardlight.escalation;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engine is a function: the same state, stimulus and time give the same decision, on any machine, every time. */
class ArchitectureTest {

    private static final String BASE = "yardlight.escalation";

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(BASE);

    /** What each package may know of ours besides itself; the base package, which decides, may know them all. */
    private static final Map<String, List<String>> MAY_KNOW = Map.ofEntries(
            Map.entry("alarm", List.of()),
            Map.entry("heartbeat", List.of("alarm", "sentence", "setup")),
            Map.entry("walltime", List.of()),
            Map.entry("trend", List.of()),
            Map.entry("tank", List.of("trend")),
            Map.entry("runtime", List.of("trend")),
            Map.entry("reply", List.of("swap")),
            Map.entry("swap", List.of()),
            Map.entry("roster", List.of("walltime")),
            Map.entry("ladder", List.of("alarm")),
            Map.entry("proof", List.of("walltime")),
            Map.entry("quiet", List.of("alarm", "walltime")),
            Map.entry("notice", List.of("alarm")),
            Map.entry("shutin", List.of()),
            Map.entry("reading", List.of()),
            Map.entry("limit", List.of("reading")),
            Map.entry("sentence", List.of()),
            Map.entry(
                    "setup",
                    List.of(
                            "alarm",
                            "quiet",
                            "roster",
                            "ladder",
                            "limit",
                            "proof",
                            "runtime",
                            "sentence",
                            "shutin",
                            "tank",
                            "trend",
                            "walltime")),
            Map.entry("wording", List.of("alarm", "setup", "shutin", "tank")));

    /** Each answers differently from call to call or from machine to machine. */
    private static final Set<String> FICKLE_CALLS = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.lang.System.getLogger",
            "java.lang.System.identityHashCode",
            "java.lang.Math.random",
            "java.util.UUID.randomUUID",
            "java.util.Collections.shuffle",
            "java.time.ZoneId.systemDefault",
            "java.util.TimeZone.getDefault",
            "java.util.Locale.getDefault");

    /** The same, for what takes the machine's locale unless one is named. */
    private static final Set<String> FICKLE_SIGNATURES = Set.of(
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.lang.String.formatted([Ljava.lang.Object;)",
            "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
            "java.time.format.DateTimeFormatter.ofPattern(java.lang.String)");

    private static final Set<String> FICKLE_TYPES = Set.of(
            "java.lang.Thread",
            "java.lang.ThreadLocal",
            "java.lang.System$Logger",
            "java.util.Date",
            "java.util.Calendar",
            "java.util.Random",
            "java.util.SplittableRandom",
            "java.util.Timer",
            "java.io.Console",
            "java.io.File",
            "java.io.FileInputStream",
            "java.io.FileOutputStream",
            "java.io.PrintStream",
            "java.io.RandomAccessFile",
            "java.security.SecureRandom");

    private static final Set<String> FICKLE_PACKAGES = Set.of(
            "java.net",
            "java.nio.channels",
            "java.nio.file",
            "java.util.concurrent",
            "java.util.concurrent.locks",
            "java.util.logging",
            "java.util.random");

    private static final ArchRule NO_CLOCK_NO_CHANCE = noClasses()
            .should()
            .accessTargetWhere(
                    DescribedPredicate.describe("ask the clock, chance or the machine", ArchitectureTest::fickle))
            .because("time is handed in, ids are made of what they name, and the same night can be played again");

    private static final ArchRule NO_THREAD_NO_OUTSIDE = noClasses()
            .should()
            .dependOnClassesThat(DescribedPredicate.describe(
                    "run beside, roll dice, write logs or reach outside", ArchitectureTest::fickle))
            .because("what is worth recording is part of the decision");

    @Test
    void the_engine_is_there_to_be_looked_at() {
        assertThat(ENGINE.size()).isGreaterThan(40);
        assertThat(ENGINE.contain(ArchitectureTest.class)).isFalse();
    }

    @Test
    void the_engine_asks_neither_clock_nor_chance() {
        NO_CLOCK_NO_CHANCE.check(ENGINE);
    }

    @Test
    void the_engine_has_no_thread_no_logger_and_no_way_out() {
        NO_THREAD_NO_OUTSIDE.check(ENGINE);
    }

    /** The module and the build say so too; this also holds where tests run without modules. */
    @Test
    void the_engine_knows_the_jdk_and_itself() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", BASE + "..")
                .check(ENGINE);
    }

    @ParameterizedTest
    @MethodSource("packages")
    void a_package_knows_only_what_it_needs(String name) {
        Stream<String> known = Stream.concat(Stream.of(name), MAY_KNOW.get(name).stream());

        classes()
                .that()
                .resideInAPackage(BASE + "." + name)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(Stream.concat(Stream.of("java.."), known.map(other -> BASE + "." + other))
                        .toArray(String[]::new))
                .check(ENGINE);
    }

    static Stream<String> packages() {
        return MAY_KNOW.keySet().stream().sorted();
    }

    /** The base package is a slice too: what plays nights may know what decides, and not the other way round. */
    @Test
    void no_packages_go_round_in_a_circle() {
        slices().assignedFrom(new Packages()).should().beFreeOfCycles().check(ENGINE);
    }

    @ParameterizedTest
    @MethodSource("offenders")
    void the_rules_catch_who_breaks_them(Class<?> offender) {
        JavaClasses one = new ClassFileImporter().importClasses(offender);

        boolean caught = NO_CLOCK_NO_CHANCE.evaluate(one).hasViolation()
                || NO_THREAD_NO_OUTSIDE.evaluate(one).hasViolation();

        assertThat(caught).isTrue();
    }

    static Stream<Class<?>> offenders() {
        return Stream.of(Offenders.class.getDeclaredClasses());
    }

    private static boolean fickle(JavaAccess<?> access) {
        AccessTarget target = access.getTarget();
        String owner = target.getOwner().getName();
        boolean clock = owner.startsWith("java.time.") && target.getName().equals("now");
        boolean system = owner.equals("java.time.Clock") || owner.equals("java.time.InstantSource");
        return clock
                || system
                || FICKLE_CALLS.contains(owner + "." + target.getName())
                || FICKLE_SIGNATURES.contains(target.getFullName());
    }

    private static boolean fickle(JavaClass type) {
        return FICKLE_TYPES.contains(type.getName()) || FICKLE_PACKAGES.contains(type.getPackageName());
    }

    private static final class Packages implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return type.getPackageName().startsWith(BASE)
                    ? SliceIdentifier.of(type.getPackageName())
                    : SliceIdentifier.ignore();
        }

        @Override
        public String getDescription() {
            return "packages of the engine";
        }
    }
}
