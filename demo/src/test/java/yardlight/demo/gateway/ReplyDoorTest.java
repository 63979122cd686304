package yardlight.demo.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ReplyDoorTest {

    private final ScriptedGateway gateway = new ScriptedGateway();
    private final ReplyDoor door = new ReplyDoor(gateway.address(), "r-1");

    @AfterEach
    void close() {
        gateway.close();
    }

    @Test
    void hands_in_a_text_and_gives_the_line_that_comes_back() {
        gateway.answers(200, "{\"answer\": \"OK, Mesa 9 is yours.\", \"acknowledged\": []}");

        assertThat(door.reply("+15755550101", "ok 47")).isEqualTo("OK, Mesa 9 is yours.");
        assertThat(gateway.asked().get(0).path()).isEqualTo("/api/v1/replies");
        assertThat(gateway.asked().get(0).body()).contains("\"from\":\"+15755550101\"", "\"text\":\"ok 47\"");
    }

    @Test
    void gives_the_detail_of_a_problem() {
        gateway.answers(422, "{\"title\": \"Unprocessable\", \"detail\": \"nothing has the code 48\"}");

        assertThat(door.reply("+15755550101", "ok 48")).isEqualTo("nothing has the code 48");
    }
}
