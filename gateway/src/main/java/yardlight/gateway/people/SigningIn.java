package yardlight.gateway.people;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.authentication.dao.DaoAuthenticationProvider;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import yardlight.db.person.People;
import yardlight.db.person.Person;

/** Checks logins and passwords. */
@Configuration(proxyBeanMethods = false)
class SigningIn {

    /** Argon2id with the least that the OWASP Password Storage Cheat Sheet allows: 19 MiB, 2 passes, 1 lane. */
    @Bean
    static PasswordEncoder passwords() {
        return new RememberingEncoder(new Argon2PasswordEncoder(16, 32, 1, 19_456, 2));
    }

    static UserDetailsService logins(People people) {
        return login -> people.byLogin(login)
                .map(SigningIn::details)
                .orElseThrow(() -> new UsernameNotFoundException("no such login"));
    }

    private static UserDetails details(Person person) {
        return User.withUsername(person.login())
                .password(person.passwordHash())
                .roles(person.role().name())
                .build();
    }

    @Bean
    static AuthenticationManager signIn(People people, PasswordEncoder passwords, MetDevices devices) {
        var provider = new DaoAuthenticationProvider(logins(people));
        provider.setPasswordEncoder(passwords);
        AuthenticationProvider patient = new WrongPasswords(provider, devices);
        return new ProviderManager(patient);
    }
}
