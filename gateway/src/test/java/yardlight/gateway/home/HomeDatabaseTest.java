package yardlight.gateway.home;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringApplication;
import org.springframework.mock.env.MockEnvironment;

class HomeDatabaseTest {

    private static final String REWRITE = "spring.datasource.hikari.data-source-properties.reWriteBatchedInserts";

    private static final String WAIT = "spring.datasource.hikari.data-source-properties.socketTimeout";
    private static final String INIT = "spring.datasource.hikari.connection-init-sql";

    private final MockEnvironment environment = new MockEnvironment();

    @Test
    void puts_a_file_into_the_home_that_survives_a_killed_process() {
        processed("yardlight.home", "/srv/lamp");

        assertThat(environment.getProperty("spring.datasource.url"))
                .isEqualTo("jdbc:h2:file:/srv/lamp/yardlight;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE");
        assertThat(environment.getProperty("spring.datasource.username")).isEqualTo("sa");
    }

    @Test
    void takes_a_home_below_the_user_s_and_one_below_the_working_folder() {
        assertThat(HomeDatabase.path("~/.yardlight", "/home/ana")).isEqualTo(Path.of("/home/ana/.yardlight"));
        assertThat(HomeDatabase.path("~", "/home/ana")).isEqualTo(Path.of("/home/ana"));
        assertThat(HomeDatabase.path("data/../lamp", "/home/ana"))
                .isEqualTo(Path.of("lamp").toAbsolutePath());
    }

    @Test
    void leaves_another_database_alone_and_speeds_up_the_batches_of_postgresql() {
        processed("spring.datasource.url", "jdbc:postgresql://db.example/yardlight");

        assertThat(environment.getProperty("spring.datasource.url"))
                .isEqualTo("jdbc:postgresql://db.example/yardlight");
        assertThat(environment.getProperty(REWRITE)).isEqualTo("true");
    }

    @Test
    void has_postgresql_give_up_a_connection_that_stands_still_in_a_transaction() {
        processed("spring.datasource.url", "jdbc:postgresql://db.example/yardlight");
        assertThat(environment.getProperty(INIT)).contains("idle_in_transaction_session_timeout");
    }

    @Test
    void waits_for_an_answer_of_postgresql_for_less_than_a_minute() {
        processed("spring.datasource.url", "jdbc:postgresql://db.example/yardlight");

        assertThat(environment.getProperty(WAIT)).isEqualTo("45");
    }

    @Test
    void waits_for_it_as_long_as_somebody_says() {
        environment.setProperty(WAIT, "20");

        processed("spring.datasource.url", "jdbc:postgresql://db.example/yardlight");

        assertThat(environment.getProperty(WAIT)).isEqualTo("20");
    }

    @Test
    void leaves_what_a_connection_begins_with_to_who_says_so() {
        environment.setProperty(INIT, "set role lamp");

        processed("spring.datasource.url", "jdbc:postgresql://db.example/yardlight");

        assertThat(environment.getProperty(INIT)).isEqualTo("set role lamp");
    }

    @Test
    void refuses_a_home_that_would_end_the_address_of_the_database() {
        assertThatThrownBy(() -> processed("yardlight.home", "/srv/a;b")).isInstanceOf(IllegalArgumentException.class);
    }

    private void processed(String property, String value) {
        environment.setProperty(property, value);
        new HomeDatabase().postProcessEnvironment(environment, new SpringApplication());
    }
}
