package yardlight.channels;

import static com.tngtech.archunit.base.DescribedPredicate.alwaysTrue;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
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
import java.util.Date;

@AnalyzeClasses(packages = "yardlight.channels", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** What short messages are made of, over whatever they go. */
    private static final DescribedPredicate<JavaClass> GSM = resideInAPackage("yardlight.channels.gsm");

    /**
     * {@code web}, {@code oauth} and {@code phone} are no channels: they are how those that need it ask over HTTP and log in, and
     * what numbers are. The mailbox is the way back of mail.
     */
    @ArchTest
    static final ArchRule CHANNELS_DO_NOT_KNOW_EACH_OTHER = slices().matching("yardlight.channels.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(alwaysTrue(), GSM)
            .ignoreDependency(alwaysTrue(), resideInAPackage("yardlight.channels.web"))
            .ignoreDependency(alwaysTrue(), resideInAPackage("yardlight.channels.phone"))
            .ignoreDependency(alwaysTrue(), resideInAPackage("yardlight.channels.oauth"))
            .ignoreDependency(
                    resideInAPackage("yardlight.channels.mailbox"), resideInAPackage("yardlight.channels.mail"));

    @ArchTest
    static final ArchRule WHAT_THEY_SHARE_IS_A_FUNCTION_OF_THE_RULES_AND_THE_JDK_ONLY = classes()
            .that()
            .resideInAPackage("yardlight.channels.gsm")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "yardlight.channels.gsm",
                    "yardlight.escalation.wording",
                    "java.lang..",
                    "java.util",
                    "java.util.function",
                    "java.util.regex",
                    "java.util.stream",
                    "java.time",
                    "java.io",
                    "java.nio.charset");

    @ArchTest
    static final ArchRule WEB_KNOWS_NO_CHANNEL = classes()
            .that()
            .resideInAPackage("yardlight.channels.web")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("yardlight.channels", "yardlight.channels.web", "java..", "javax.net..");

    @ArchTest
    static final ArchRule ONLY_HTTP_PUSH_AND_OAUTH_KNOW_JACKSON = noClasses()
            .that()
            .resideOutsideOfPackages("yardlight.channels.http", "yardlight.channels.push", "yardlight.channels.oauth")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tools.jackson..", "com.fasterxml..");

    @ArchTest
    static final ArchRule THE_INTERFACE_KNOWS_NO_IMPLEMENTATION = noClasses()
            .that()
            .resideInAPackage("yardlight.channels")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("yardlight.channels.*..");

    @ArchTest
    static final ArchRule ONLY_MAIL_AND_MAILBOX_KNOW_JAKARTA_MAIL = noClasses()
            .that()
            .resideOutsideOfPackages("yardlight.channels.mail", "yardlight.channels.mailbox")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("jakarta.mail..", "org.eclipse.angus..");

    @ArchTest
    static final ArchRule ONLY_SMPP_KNOWS_JSMPP = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.channels.smpp")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.jsmpp..");

    @ArchTest
    static final ArchRule ONLY_MODEM_KNOWS_JSERIALCOMM = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.channels.modem")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fazecast..");

    @ArchTest
    static final ArchRule PHONE_KNOWS_NO_CHANNEL = classes()
            .that()
            .resideInAPackage("yardlight.channels.phone")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.phone", "com.google.i18n.phonenumbers..", "java..");

    @ArchTest
    static final ArchRule ONLY_PHONE_KNOWS_LIBPHONENUMBER = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.channels.phone")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.google.i18n..");

    @ArchTest
    static final ArchRule ONLY_PUSH_KNOWS_THE_LIBRARY_FOR_IT = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.channels.push")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.interaso..", "kotlin..");

    @ArchTest
    static final ArchRule NO_SPRING_NO_DATABASE_NO_GATEWAY = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.springframework..", "jakarta.persistence..", "yardlight.db..", "yardlight.gateway..");

    @ArchTest
    static final ArchRule NO_WALL_CLOCK = noClasses()
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
            .callMethod(Clock.class, "systemDefaultZone")
            .orShould()
            .callConstructor(Date.class);
}
