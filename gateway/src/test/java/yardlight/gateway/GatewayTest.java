package yardlight.gateway;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.TestConstructor;

/** The whole gateway on a database in memory, its doors open to MockMvc and behind them a lane that only listens. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(
        properties = {
            "spring.datasource.url=jdbc:h2:mem:doors;DB_CLOSE_DELAY=-1",
            "yardlight.owner-password=" + GatewayTest.PASSWORD,
            "yardlight.public-url=https://yardlight.example/",
            "yardlight.replies.key=" + GatewayTest.REPLIES_KEY
        })
@AutoConfigureMockMvc
@Import(TestGateway.class)
@TestConstructor(autowireMode = TestConstructor.AutowireMode.ALL)
public @interface GatewayTest {

    String PASSWORD = "a lamp at the end of the road";
    String REPLIES_KEY = "replies-come-in-with-this";
}
