package yardlight.gateway;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The shape of what works behind the doors: lane, dispatcher, clock, mail. */
@AnalyzeClasses(packages = "yardlight.gateway", importOptions = ImportOption.DoNotIncludeTests.class)
class MachineryArchitectureTest {

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
    static final ArchRule ONLY_MAIL_KNOWS_HOW_MAIL_IS_SENT_AND_HEARD = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.mail")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.mail..", "yardlight.channels.mailbox..", "jakarta.mail..");

    @ArchTest
    static final ArchRule ONLY_SMPP_KNOWS_HOW_TEXTS_ARE_SENT_OVER_IT = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.smpp")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.smpp..", "org.jsmpp..");

    @ArchTest
    static final ArchRule ONLY_MODEM_KNOWS_HOW_A_MODEM_IS_SPOKEN_TO = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.modem")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.modem..", "com.fazecast..");

    /** A relay that shuts a site in is asked over the same machinery, and by nobody else than the shut-in. */
    @ArchTest
    static final ArchRule ONLY_HTTP_KNOWS_HOW_A_PROVIDER_IS_ASKED = noClasses()
            .that()
            .resideOutsideOfPackages("yardlight.gateway.http", "yardlight.gateway.shutin")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.http..");

    @ArchTest
    static final ArchRule ONLY_PUSH_KNOWS_HOW_A_BROWSER_IS_REACHED = noClasses()
            .that()
            .resideOutsideOfPackage("yardlight.gateway.push")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("yardlight.channels.push..", "com.interaso..", "kotlin..");
}
