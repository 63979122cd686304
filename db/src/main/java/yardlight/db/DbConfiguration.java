package yardlight.db;

import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;

/** Brings everything of this module into an application that imports it, wherever the application's own package is. */
@Configuration(proxyBeanMethods = false)
@ComponentScan
public class DbConfiguration {}
