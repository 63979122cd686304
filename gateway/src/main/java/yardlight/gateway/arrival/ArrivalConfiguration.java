package yardlight.gateway.arrival;

import jakarta.servlet.DispatcherType;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import yardlight.gateway.document.Body;
import yardlight.gateway.problem.ProblemWriter;

/** Puts the waiting for bodies before everything else. */
@Configuration(proxyBeanMethods = false)
class ArrivalConfiguration {

    /**
     * Read and decided, a backlog takes some ten times its size for a moment: a heap of 128 MB bears four of 1.5 MB at once
     * and not sixteen. So it has room for two of the largest.
     */
    private static final int HEAP_FOR_A_BYTE = 32;

    /** What a connection holds while its body is waited for is 100 KB; a fifth of the heap may go that way. */
    private static final int HEAP_FOR_A_PLACE = 512 * 1024;

    @Bean
    static FilterRegistrationBean<ArrivalFilter> arrivalFilter(
            ProblemWriter writer, @Value("${yardlight.arrival.within}") Duration within) {
        long heap = Runtime.getRuntime().maxMemory();
        var arrivals = new Arrivals(
                new Room(Math.max(Body.LARGEST_POST, heap / HEAP_FOR_A_BYTE)),
                new Places((int) Math.min(Integer.MAX_VALUE, heap / HEAP_FOR_A_PLACE)),
                Math.max(Body.LARGEST_POST, Body.roomy()),
                within,
                writer);
        var registration = new FilterRegistrationBean<>(new ArrivalFilter(arrivals));
        registration.setOrder(Ordered.HIGHEST_PRECEDENCE);
        registration.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ASYNC);
        return registration;
    }
}
