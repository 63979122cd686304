package yardlight.gateway;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;

@AnalyzeClasses(packages = "yardlight.gateway", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule FEATURES_DO_NOT_GO_ROUND_IN_CIRCLES =
            slices().matching("yardlight.gateway.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule THE_WALL_CLOCK_HANGS_IN_ONE_PLACE = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.clock")
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalTime.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(OffsetDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .callMethod(Clock.class, "systemUTC")
            .orShould()
            .callMethod(Clock.class, "systemDefaultZone");

    @ArchTest
    static final ArchRule THE_LANE_KNOWS_NOBODY_WHO_USES_IT = noClasses()
            .that()
            .resideInAPackage("yardlight.gateway.lane")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels..", "yardlight.gateway.due..", "yardlight.gateway.dispatch..");

    @ArchTest
    static final ArchRule THE_MACHINERY_KNOWS_NOTHING_OF_THE_WEB = noClasses()
            .that()
            .resideInAnyPackage(
                    "yardlight.gateway.lane",
                    "yardlight.gateway.due",
                    "yardlight.gateway.dispatch",
                    "yardlight.gateway.clock")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.springframework.web..", "jakarta.servlet..", "org.springframework.security..");

    @ArchTest
    static final ArchRule HIBERNATE_STAYS_BEHIND_THE_DATABASE_S_DOOR = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("jakarta.persistence..", "org.hibernate..", "org.springframework.data..");

    @ArchTest
    static final ArchRule ONLY_MAIL_KNOWS_HOW_MAIL_IS_SENT = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.mail")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.mail..", "jakarta.mail..");
}
