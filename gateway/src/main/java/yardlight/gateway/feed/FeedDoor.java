package yardlight.gateway.feed;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import yardlight.gateway.problem.SafeHeaders;

/** The door for calendar programs, which have no login: the token in the address is checked where it is used. */
@Configuration(proxyBeanMethods = false)
class FeedDoor {

    @Bean
    @Order(21)
    SecurityFilterChain feedChain(HttpSecurity http) {
        return http.securityMatcher("/calendar/*")
                .authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .headers(SafeHeaders::set)
                .csrf(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .build();
    }
}
