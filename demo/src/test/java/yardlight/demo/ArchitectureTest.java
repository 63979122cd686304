package yardlight.demo;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "yardlight.demo", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule the_demo_knows_the_gateway_from_outside_only = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "yardlight.escalation..", "yardlight.channels..", "yardlight.db..", "yardlight.gateway..");

    @ArchTest
    static final ArchRule packages_do_not_know_each_other_in_circles =
            slices().matching("yardlight.demo.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule what_happens_at_the_places_does_not_know_what_is_played = noClasses()
            .that()
            .resideInAnyPackage("..boxes..", "..carrier..", "..phone..", "..gateway..", "..stage..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("..night..", "..page..", "..bench..");
}
