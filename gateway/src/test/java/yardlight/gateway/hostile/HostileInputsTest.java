package yardlight.gateway.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpMethod;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.security.test.web.servlet.setup.SecurityMockMvcConfigurers;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;
import yardlight.gateway.Doors;
import yardlight.gateway.FakeLane;
import yardlight.gateway.GatewayTest;

/**
 * Generated hostile inputs at every door that reads something: no answer of 500 or more, nothing handed on that was refused, no more
 * memory and time than a bound, and nothing left in the database. Some thousands in the build; docs/security.md has the
 * command for a million. A failure names seed and number, with which the same input is made again.
 */
@GatewayTest
class HostileInputsTest {

    private static final long SEED = Long.getLong("yardlight.hostile.seed", 1);
    private static final int INPUTS = Integer.getInteger("yardlight.hostile.inputs", 6_000);

    /** Bytes that one answer may take and let go of; without a fuzzer in the same process the most is a fortieth of it. */
    private static final long MOST_MEMORY = 1L << 30;

    private static final long MOST_NANOS = 10_000_000_000L;

    /** A text that was answered leaves a line, and a key that was made. */
    private static final String LOG = "LOG_LINE";

    /** 256 lines that were hashed together. */
    private static final String LOG_TILES = "LOG_TILE";

    private final MockMvc mvc;
    private final FakeLane lane;
    private final JdbcTemplate jdbc;
    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final Map<Target, Map<Integer, Integer>> answers = new EnumMap<>(Target.class);
    private long mostMemory;
    private String largest = "";
    private long mostNanos;

    /** @param doors has made the logins and the key */
    HostileInputsTest(
            WebApplicationContext context,
            @Qualifier("arrivalFilter") FilterRegistrationBean<?> arrival,
            FakeLane lane,
            JdbcTemplate jdbc,
            Doors doors) {
        // Not the one that is there, which keeps every request in case that there is a failure to show.
        this.mvc = MockMvcBuilders.webAppContextSetup(context)
                .addFilters(arrival.getFilter())
                .apply(SecurityMockMvcConfigurers.springSecurity())
                .build();
        this.lane = lane;
        this.jdbc = jdbc;
        assertThat(doors).isNotNull();
    }

    @Test
    void break_nothing_take_bounded_memory_and_leave_nothing_behind() throws Exception {
        // The first page that somebody sees is remembered with their device.
        mvc.perform(request(Target.RECORD_PAGE, new byte[0]));
        Map<String, Long> before = rows();
        long heapBefore = heap();
        long began = System.nanoTime();

        for (long number = 0; number < INPUTS; number++) {
            one(number);
        }

        long grown = heap() - heapBefore;
        System.out.printf(
                "%d hostile inputs, seed %d, in %d s: at most %d KB (%s) and %d ms of a processor for one; heap grew by %d MB; answers"
                        + " %s%n",
                INPUTS,
                SEED,
                (System.nanoTime() - began) / 1_000_000_000,
                mostMemory >> 10,
                largest,
                mostNanos / 1_000_000,
                grown >> 20,
                answers);
        Map<String, Long> after = rows();
        long lines = after.remove(LOG) - before.remove(LOG);
        long tiles = after.remove(LOG_TILES) - before.remove(LOG_TILES);
        before.merge("BOX_KEY", (long) count(Target.KEY, 201), Long::sum);
        assertThat(after).isEqualTo(before);
        assertThat(lines)
                .as(() -> jdbc.queryForList("select what, words from log_line").toString())
                .isLessThanOrEqualTo(count(Target.REPLY, 200) + count(Target.KEY, 201));
        assertThat(tiles).isLessThanOrEqualTo(lines / 256 + 1);
        assertThat(grown).isLessThan(64L << 20);
        assertThat(answers.keySet()).containsExactly(Target.values());
    }

    private int count(Target target, int status) {
        return answers.get(target).getOrDefault(status, 0);
    }

    private void one(long number) throws Exception {
        var hostile = new Hostile(SEED, number);
        Target target = hostile.one(List.of(Target.values()));
        byte[] input = hostile.spoilt(hostile.one(target.good), target.good);
        String what = "seed " + SEED + ", number " + number + ", " + target;
        lane.clear();

        long memory = threads.getCurrentThreadAllocatedBytes();
        // Of the processor, so that a busy machine makes nothing slow.
        long nanos = threads.getCurrentThreadCpuTime();
        MockHttpServletResponse answer =
                mvc.perform(request(target, input)).andReturn().getResponse();
        nanos = threads.getCurrentThreadCpuTime() - nanos;
        memory = threads.getCurrentThreadAllocatedBytes() - memory;

        int status = answer.getStatus();
        assertThat(status).as("%s: %s", what, answer.getContentAsString()).isBetween(200, 499);
        if (status >= 400) {
            assertThat(lane.events).as(what).isEmpty();
            assertThat(lane.readings).as(what).isEmpty();
            assertThat(lane.heartbeats).as(what).isEmpty();
            assertThat(lane.decided).as(what).isEmpty();
        }
        assertThat(memory).as(what).isLessThan(MOST_MEMORY);
        assertThat(nanos).as(what).isLessThan(MOST_NANOS);
        if (memory > mostMemory) {
            mostMemory = memory;
            largest = what + ", " + input.length + " bytes, " + status;
        }
        mostNanos = Math.max(mostNanos, nanos);
        answers.computeIfAbsent(target, key -> new TreeMap<>()).merge(status, 1, Integer::sum);
    }

    private static MockHttpServletRequestBuilder request(Target target, byte[] input) {
        String path = switch (target.where) {
            case PATH, QUERY -> target.path + Hostile.percent(input);
            case BODY, HEADER -> target.path;
        };
        MockHttpServletRequestBuilder request = MockMvcRequestBuilders.request(
                HttpMethod.valueOf(target.method), URI.create("http://localhost" + path));
        if (!target.type.isEmpty()) {
            request.contentType(target.type);
        }
        switch (target.who) {
            case BOX -> request.header(HttpHeaders.AUTHORIZATION, "Bearer the-key-of-mesa-9");
            case OWNER -> request.header(HttpHeaders.AUTHORIZATION, Doors.basic("owner"));
            case PROVIDER -> request.header(HttpHeaders.AUTHORIZATION, "Bearer " + Target.REPLIES_KEY);
            case NOBODY -> request.header("X-Nobody", "1");
        }
        return switch (target.where) {
            case BODY -> request.content(input);
            case HEADER ->
                request.header("Signature-Input", Hostile.header(input)).header("Signature", "box=:AAAA:");
            case PATH, QUERY -> request;
        };
    }

    /** How many rows there are in each table. */
    private Map<String, Long> rows() {
        var rows = new TreeMap<String, Long>();
        for (String table : jdbc.queryForList(
                "select table_name from information_schema.tables where table_schema = 'PUBLIC'", String.class)) {
            // The scheduler and the database's own patience write by themselves.
            if (!table.startsWith("QRTZ")) {
                rows.put(table, jdbc.queryForObject("select count(*) from \"" + table + "\"", Long.class));
            }
        }
        assertThat(rows).hasSizeGreaterThan(15);
        return rows;
    }

    private static long heap() {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 3; i++) {
            System.gc();
            Runtime runtime = Runtime.getRuntime();
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least;
    }
}
