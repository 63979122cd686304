package yardlight.gateway;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether the package of a class has a {@code package-info.java}; it leaves no class file when nothing is annotated. */
final class InPackageWithInfo extends ArchCondition<JavaClass> {

    InPackageWithInfo() {
        super("be in a package with a package-info.java");
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        Path info = Path.of("src/main/java")
                .resolve(type.getPackageName().replace('.', '/'))
                .resolve("package-info.java");
        events.add(new SimpleConditionEvent(
                type, Files.exists(info), type.getPackageName() + " has no package-info.java"));
    }
}
