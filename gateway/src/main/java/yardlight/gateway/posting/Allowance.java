package yardlight.gateway.posting;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import org.springframework.http.HttpStatus;
import yardlight.gateway.problem.Problem;

/**
 * How much a box may post: a token bucket for each, full at first. A box that has spent its allowance is not shut out;
 * it is the lane that then takes only what is news.
 */
public final class Allowance {

    private final LoadingCache<String, Bucket> buckets;

    /**
     * @param burst size of the bucket
     * @param refill time in which one token comes back
     */
    public Allowance(int burst, Duration refill, TimeMeter time) {
        buckets = Caffeine.newBuilder()
                .maximumSize(10_000)
                .build(box -> Bucket.builder()
                        .withCustomTimePrecision(time)
                        .addLimit(limit -> limit.capacity(burst).refillGreedy(1, refill))
                        .build());
    }

    /** Takes the tokens, or none and says no. */
    public boolean take(String box, int tokens) {
        return tokens == 0 || buckets.get(box).tryConsume(tokens);
    }

    /** How long until there is a token again; zero when there is one. */
    public Duration untilNext(String box) {
        return Duration.ofNanos(buckets.get(box).estimateAbilityToConsume(1).getNanosToWaitForRefill());
    }

    /** What a box is told that posts too much. */
    public Problem refusal(String box) {
        return Problem.later(
                HttpStatus.TOO_MANY_REQUESTS, "this box has spent its allowance; nothing was stored", untilNext(box));
    }
}
