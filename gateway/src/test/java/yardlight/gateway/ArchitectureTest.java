package yardlight.gateway;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Date;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RestController;
import yardlight.escalation.alarm.AlarmState;
import yardlight.escalation.alarm.AlarmTransitions;
import yardlight.escalation.ladder.Callout;

/** The shape of the gateway. */
class ArchitectureTest {

    private static final JavaClasses GATEWAY = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("yardlight.gateway");

    private static final Set<String> CLOCKS = Set.of(
            "java.time.Instant",
            "java.time.LocalDate",
            "java.time.LocalTime",
            "java.time.LocalDateTime",
            "java.time.OffsetDateTime",
            "java.time.ZonedDateTime",
            "java.time.Year",
            "java.time.YearMonth");

    @Test
    void only_the_clock_asks_what_time_it_is() {
        noClasses()
                .that()
                .resideOutsideOfPackage("yardlight.gateway.clock..")
                .should()
                .accessTargetWhere(describe("the wall clock", ArchitectureTest::asksTheTime))
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(Date.class)
                .check(GATEWAY);
    }

    private static boolean asksTheTime(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getName();
        boolean now = name.equals("now") && CLOCKS.contains(owner);
        boolean clock = owner.equals("java.time.Clock") && (name.startsWith("system") || name.startsWith("tick"));
        boolean source = owner.equals("java.time.InstantSource") && name.equals("system");
        return now || clock || source || owner.equals("java.lang.System") && name.equals("currentTimeMillis");
    }

    @Test
    void features_do_not_lean_on_each_other_in_a_circle() {
        slices().matching("yardlight.gateway.(*)..").should().beFreeOfCycles().check(GATEWAY);
    }

    /** What features share is small and has no doors of its own; a feature that knows another one is one feature. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "answer",
                "arrival",
                "board",
                "boxes",
                "boxsheet",
                "calendar",
                "coversheet",
                "curves",
                "describe",
                "dispatch",
                "due",
                "edits",
                "evidence",
                "feed",
                "health",
                "home",
                "http",
                "ladders",
                "lines",
                "logins",
                "mail",
                "modem",
                "moving",
                "passkeys",
                "owner",
                "paths",
                "push",
                "readings",
                "record",
                "rehearsal",
                "reports",
                "restore",
                "shutin",
                "sites",
                "smpp",
                "start",
                "story",
                "suggest",
                "transport",
                "turns",
                "vacations",
                "watch"
            })
    void no_feature_reaches_into_another(String feature) {
        noClasses()
                .that()
                .resideOutsideOfPackage("yardlight.gateway." + feature + "..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("yardlight.gateway." + feature + "..")
                .check(GATEWAY);
    }

    /** A rule that a controller asks for by state stands in the engine's table; here it would stand a second time. */
    @Test
    void controllers_have_no_rules_of_alarms_or_calls() {
        noClasses()
                .that(areControllers())
                .should()
                .accessTargetWhere(describe("a state by its name", ArchitectureTest::namesAState))
                .orShould()
                .dependOnClassesThat()
                .belongToAnyOf(AlarmTransitions.class, Callout.Kind.class)
                .check(GATEWAY);
    }

    private static boolean namesAState(JavaAccess<?> access) {
        return access instanceof JavaFieldAccess && access.getTargetOwner().isEquivalentTo(AlarmState.class);
    }

    @Test
    void controllers_are_nobody_elses_business() {
        classes().that(areControllers()).should().bePackagePrivate().check(GATEWAY);
    }

    @Test
    void nothing_is_injected_behind_a_constructor() {
        noFields().should().beAnnotatedWith(Autowired.class).check(GATEWAY);
    }

    @Test
    void every_package_says_what_it_is_about() {
        classes().should(new InPackageWithInfo()).check(GATEWAY);
    }

    private static DescribedPredicate<JavaClass> areControllers() {
        return describe(
                "controllers",
                type -> type.isAnnotatedWith(Controller.class) || type.isAnnotatedWith(RestController.class));
    }
}
