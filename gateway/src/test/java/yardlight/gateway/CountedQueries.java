package yardlight.gateway;

import javax.sql.DataSource;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import yardlight.db.CountingDataSource;

/** Counts what the gateway of a test asks its database; the test has a database of its own. */
@TestConfiguration(proxyBeanMethods = false)
public class CountedQueries {

    private static CountingDataSource counting;

    @Bean
    static BeanPostProcessor counter() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                if (!(bean instanceof DataSource source) || !name.equals("dataSource")) {
                    return bean;
                }
                counting = new CountingDataSource(source);
                return counting.proxy();
            }
        };
    }

    /** How many of them this thread makes meanwhile. */
    public static long during(Runnable work) {
        long before = counting.mine();
        work.run();
        return counting.mine() - before;
    }
}
