package yardlight.gateway.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestConstructor;
import yardlight.db.person.People;
import yardlight.gateway.TestGateway;

/** The password that a first start is given. */
@SpringBootTest(
        properties = {
            "spring.datasource.url=jdbc:h2:mem:first-password;DB_CLOSE_DELAY=-1",
            "spring.quartz.properties.org.quartz.scheduler.instanceName=first-password",
            "yardlight.home=target/home",
            "yardlight.owner-password=secret"
        })
@Import(TestGateway.class)
@TestConstructor(autowireMode = TestConstructor.AutowireMode.ALL)
@ExtendWith(OutputCaptureExtension.class)
class FirstPasswordTest {

    private final People people;
    private final FirstOwner first;

    FirstPasswordTest(People people, FirstOwner first) {
        this.people = people;
        this.first = first;
    }

    @Test
    void is_taken_even_if_it_is_weak_and_another_one_is_asked_for(CapturedOutput output) {
        assertThat(people.byLogin("owner"))
                .hasValueSatisfying(owner -> assertThat(owner.weak()).isTrue());
        assertThat(output)
                .contains("yardlight.owner-password must be at least 15 characters")
                .doesNotContain("secret ");

        int said = output.getAll().split("yardlight.owner-password must be", -1).length;
        first.run(new DefaultApplicationArguments());

        assertThat(output.getAll().split("yardlight.owner-password must be", -1))
                .hasSize(said);
    }
}
