package yardlight.db;

import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;
import org.springframework.data.jpa.repository.config.EnableJpaRepositories;

/** Brings everything of this module into an application that imports it, wherever the application's own package is. */
@Configuration(proxyBeanMethods = false)
@ComponentScan
@EntityScan
@EnableJpaRepositories
public class DbConfiguration {}
