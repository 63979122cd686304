package yardlight.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.lang.module.ModuleDescriptor;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The compiler keeps other modules out as long as nobody lets them in. */
class ModuleTest {

    @Test
    void the_engine_requires_nothing_but_the_language_itself() throws IOException {
        try (InputStream compiled = Files.newInputStream(Path.of("target", "classes", "module-info.class"))) {
            assertThat(ModuleDescriptor.read(compiled).requires())
                    .extracting(ModuleDescriptor.Requires::name)
                    .containsExactly("java.base");
        }
    }
}
