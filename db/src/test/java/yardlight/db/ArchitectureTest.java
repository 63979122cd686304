package yardlight.db;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import jakarta.persistence.Entity;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import org.springframework.data.jpa.repository.NativeQuery;
import org.springframework.data.repository.Repository;
import yardlight.db.disk.Packing;

@AnalyzeClasses(packages = "yardlight.db", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    @ArchTest
    static final ArchRule FEATURES_DO_NOT_GO_ROUND_IN_CIRCLES =
            slices().matching("yardlight.db.(*)..").should().beFreeOfCycles();

    /** The journal writes what others read; what moves is held against the log's head; columns, disk, due keys, the log's tree and how readings lie are what they share. */
    @ArchTest
    static final ArchRule FEATURES_DO_NOT_REACH_INTO_EACH_OTHER = slices().matching("yardlight.db.(*)..")
            .should()
            .notDependOnEachOther()
            .ignoreDependency(anything(), in("columns"))
            .ignoreDependency(anything(), in("disk"))
            .ignoreDependency(anything(), in("tree"))
            .ignoreDependency(in("journal"), in("due"))
            .ignoreDependency(in("journal"), in("reading"))
            .ignoreDependency(in("moving"), in("evidence"));

    @ArchTest
    static final ArchRule ENTITIES_STAY_AT_HOME =
            classes().that().areAnnotatedWith(Entity.class).should().bePackagePrivate();

    @ArchTest
    static final ArchRule ENTITIES_ARE_CALLED_ROWS =
            classes().that().areAnnotatedWith(Entity.class).should().haveSimpleNameEndingWith("Row");

    @ArchTest
    static final ArchRule SPRING_S_REPOSITORIES_STAY_AT_HOME =
            classes().that().areAssignableTo(Repository.class).should().bePackagePrivate();

    /** Spring Data's own language and names of methods that are queries would load a parser of 450 classes at the start. */
    @ArchTest
    static final ArchRule QUERIES_ARE_SQL = methods()
            .that()
            .areDeclaredInClassesThat()
            .areAssignableTo(Repository.class)
            .and()
            .haveNameNotMatching("findById")
            .should()
            .beAnnotatedWith(NativeQuery.class);

    @ArchTest
    static final ArchRule HIBERNATE_STAYS_OUT_OF_THE_WRITE_SIDE = noClasses()
            .that()
            .resideInAnyPackage(
                    "yardlight.db.journal", "yardlight.db.columns", "yardlight.db.due", "yardlight.db.outbox")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("jakarta.persistence..", "org.hibernate..", "org.springframework.data..");

    @ArchTest
    static final ArchRule NO_CHANNEL_NO_GATEWAY_NO_WEB = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "yardlight.channels..", "yardlight.gateway..", "org.springframework.web..", "jakarta.servlet..");

    @ArchTest
    static final ArchRule NO_DRIVER_IS_CALLED_BY_NAME = noClasses()
            .that()
            .doNotBelongToAnyOf(Packing.class) // for which there is no SQL
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.h2..", "org.postgresql..");

    @ArchTest
    static final ArchRule NO_CLOCK_AND_NO_THREAD = noClasses()
            .should()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(OffsetDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(Clock.class, InstantSource.class, Thread.class);

    private static DescribedPredicate<JavaClass> in(String feature) {
        return JavaClass.Predicates.resideInAPackage("yardlight.db." + feature);
    }

    private static DescribedPredicate<JavaClass> anything() {
        return DescribedPredicate.alwaysTrue();
    }
}
