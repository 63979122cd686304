package yardlight.gateway.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;
import org.springframework.http.HttpStatus;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import tools.jackson.databind.json.JsonMapper;
import yardlight.gateway.problem.Fault;
import yardlight.gateway.problem.Problem;
import yardlight.gateway.problem.ProblemWriter;

/** What somebody sees of the posts of a box that they wire. */
class PostsTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    private static final String KEY = "Zk3-q0_xXfLw8Qm1n5TzR7b2C9dEhGjKpSuVyAa4B6i";

    private final Posts posts = new Posts(() -> NOW);

    private static MockHttpServletRequest post() {
        return new MockHttpServletRequest("POST", "/api/v1/events");
    }

    private void taken(String said) {
        MockHttpServletRequest request = post();
        posts.tell(request, "box", () -> said, () -> "noted");
        posts.answered(request, "box", 202);
    }

    private void refused(Problem problem) throws Exception {
        MockHttpServletRequest request = post();
        new ProblemWriter(new JsonMapper(), new StaticMessageSource())
                .write(problem, request, new MockHttpServletResponse());
        posts.answered(request, "box", problem.status().value());
    }

    @Test
    void are_kept_only_from_the_first_look_on() {
        taken("before");
        assertThat(posts.look("box")).isEmpty();

        taken("after");

        assertThat(posts.look("box")).containsExactly(new Post(NOW, "events", 202, "after", "noted"));
        assertThat(posts.look("another")).isEmpty();
    }

    @Test
    void are_at_most_twenty_newest_first() {
        posts.look("box");

        for (int i = 1; i <= 25; i++) {
            taken("post " + i);
        }

        assertThat(posts.look("box"))
                .hasSize(20)
                .extracting(Post::said)
                .startsWith("post 25")
                .endsWith("post 6");
    }

    @Test
    void say_why_one_was_refused() throws Exception {
        posts.look("box");

        refused(Problem.invalid(Fault.at("#/state", "must be active or normal: on")));
        refused(Problem.of(HttpStatus.BAD_REQUEST, "not JSON"));

        assertThat(posts.look("box"))
                .extracting(Post::good, Post::status, Post::answer)
                .containsExactly(
                        tuple(false, 400, "not JSON"), tuple(false, 422, "state must be active or normal: on"));
    }

    @Test
    void never_show_a_key() throws Exception {
        posts.look("box");

        taken(KEY + " high active");
        refused(Problem.invalid(Fault.at("#/point", "must be 1 to 64 of a-z: " + KEY.substring(0, 40) + "...")));

        assertThat(posts.look("box"))
                .allSatisfy(post -> assertThat(post.said() + post.answer()).doesNotContain(KEY.substring(0, 12)));
        assertThat(posts.look("box")).extracting(Post::answer).contains("point must be 1 to 64 of a-z: ***...");
    }

    @Test
    void are_of_a_bounded_number_of_boxes() {
        for (int i = 0; i < 10 * Posts.MOST; i++) {
            posts.look("box-" + i);
        }
        posts.look("box");

        assertThat(posts.watched()).isLessThanOrEqualTo(Posts.MOST);
    }
}
