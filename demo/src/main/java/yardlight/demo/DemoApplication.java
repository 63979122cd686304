package yardlight.demo;

import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.ConfigurableApplicationContext;
import yardlight.demo.bench.Bench;
import yardlight.demo.stage.StageSettings;

/** A made-up operator around the real gateway; with {@code --demo.bench} the measurements instead. */
@SpringBootApplication
@EnableConfigurationProperties(StageSettings.class)
public class DemoApplication {

    public static void main(String[] args) throws Exception {
        if (Stream.of(args).anyMatch(arg -> arg.startsWith("--demo.bench"))) {
            Bench.run(args);
            return;
        }
        ConfigurableApplicationContext demo = SpringApplication.run(DemoApplication.class, args);
        if (demo.getBean(DemoRun.class).leaves()) {
            System.exit(SpringApplication.exit(demo));
        }
    }
}
