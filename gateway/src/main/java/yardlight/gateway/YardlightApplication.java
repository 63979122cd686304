package yardlight.gateway;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** The gateway. */
@SpringBootApplication(scanBasePackages = "yardlight")
public class YardlightApplication {

    public static void main(String[] args) {
        SpringApplication.run(YardlightApplication.class, args);
    }
}
