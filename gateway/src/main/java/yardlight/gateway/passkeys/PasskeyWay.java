package yardlight.gateway.passkeys;

import java.util.Set;
import org.springframework.security.authentication.ProviderManager;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.authentication.HttpMessageConverterAuthenticationSuccessHandler;
import org.springframework.security.web.authentication.session.ChangeSessionIdAuthenticationStrategy;
import org.springframework.security.web.authentication.www.BasicAuthenticationFilter;
import org.springframework.security.web.savedrequest.NullRequestCache;
import org.springframework.security.web.webauthn.api.AuthenticatorSelectionCriteria;
import org.springframework.security.web.webauthn.api.PublicKeyCredentialRpEntity;
import org.springframework.security.web.webauthn.api.ResidentKeyRequirement;
import org.springframework.security.web.webauthn.api.UserVerificationRequirement;
import org.springframework.security.web.webauthn.authentication.PublicKeyCredentialRequestOptionsFilter;
import org.springframework.security.web.webauthn.authentication.WebAuthnAuthenticationFilter;
import org.springframework.security.web.webauthn.authentication.WebAuthnAuthenticationProvider;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;
import org.springframework.security.web.webauthn.registration.PublicKeyCredentialCreationOptionsFilter;
import org.springframework.security.web.webauthn.registration.WebAuthnRegistrationFilter;
import org.springframework.stereotype.Component;
import yardlight.gateway.people.MoreWaysIn;

/**
 * Adds passkeys to the door for people. The filters are Spring Security's own, put together here and not by its configurer,
 * which would neither change the session's id nor let the door know who came in. A passkey has to verify its user: it
 * stands for a password and a thing at once.
 */
@Component
class PasskeyWay implements MoreWaysIn {

    private final PasskeyAddress address;
    private final StoredLogins logins;
    private final StoredCredentials credentials;

    PasskeyWay(PasskeyAddress address, StoredLogins logins, StoredCredentials credentials) {
        this.address = address;
        this.logins = logins;
        this.credentials = credentials;
    }

    @Override
    public void add(HttpSecurity http, Door door) {
        if (!address.isThere()) {
            return;
        }
        Webauthn4JRelyingPartyOperations party = party();
        var tries = new Tries();
        var asks = new PublicKeyCredentialRequestOptionsFilter(party);
        asks.setRequestOptionsRepository(tries);
        http.addFilterBefore(signIn(party, tries, door), BasicAuthenticationFilter.class)
                .addFilterAfter(asks, AuthorizationFilter.class)
                .addFilterAfter(new PublicKeyCredentialCreationOptionsFilter(party), AuthorizationFilter.class)
                .addFilterAfter(registration(party), AuthorizationFilter.class);
    }

    private Webauthn4JRelyingPartyOperations party() {
        var party = new Webauthn4JRelyingPartyOperations(
                logins,
                credentials,
                PublicKeyCredentialRpEntity.builder()
                        .id(address.host())
                        .name("Yardlight")
                        .build(),
                Set.of(address.origin()));
        party.setCustomizeRequestOptions(options -> options.userVerification(UserVerificationRequirement.REQUIRED));
        party.setCustomizeCreationOptions(
                options -> options.authenticatorSelection(AuthenticatorSelectionCriteria.builder()
                        .residentKey(ResidentKeyRequirement.REQUIRED)
                        .userVerification(UserVerificationRequirement.REQUIRED)
                        .build()));
        return party;
    }

    private static WebAuthnAuthenticationFilter signIn(Webauthn4JRelyingPartyOperations party, Tries tries, Door door) {
        var answer = new HttpMessageConverterAuthenticationSuccessHandler();
        answer.setRequestCache(new NullRequestCache());
        var filter = new WebAuthnAuthenticationFilter();
        filter.setAuthenticationManager(new ProviderManager(new WebAuthnAuthenticationProvider(party, door.logins())));
        filter.setRequestOptionsRepository(tries);
        filter.setSessionAuthenticationStrategy(new ChangeSessionIdAuthenticationStrategy());
        filter.setAuthenticationSuccessHandler(door.then(answer));
        return filter;
    }

    /** Removes none: that is done on the page. */
    private WebAuthnRegistrationFilter registration(Webauthn4JRelyingPartyOperations party) {
        var filter = new WebAuthnRegistrationFilter(credentials, party);
        filter.setRemoveCredentialMatcher(request -> false);
        return filter;
    }
}
