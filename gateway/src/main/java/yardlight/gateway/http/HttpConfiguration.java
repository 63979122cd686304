package yardlight.gateway.http;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The channels of the providers. */
@Configuration(proxyBeanMethods = false)
@Import(HttpChannels.class)
class HttpConfiguration {}
