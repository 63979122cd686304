package yardlight.gateway.passkeys;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
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
import org.springframework.security.web.webauthn.management.WebAuthnRelyingPartyOperations;
import org.springframework.security.web.webauthn.management.Webauthn4JRelyingPartyOperations;
import org.springframework.security.web.webauthn.registration.PublicKeyCredentialCreationOptionsFilter;
import org.springframework.security.web.webauthn.registration.WebAuthnRegistrationFilter;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;
import yardlight.gateway.people.Confirmed;
import yardlight.gateway.people.MoreWaysIn;
import yardlight.gateway.problem.CookieNames;

/**
 * Adds passkeys to the door for people. The filters are Spring Security's own, put together here and not by its configurer,
 * which would neither change the session's id nor let the door know who came in. A passkey has to verify its user: it
 * stands for a password and a thing at once.
 */
@Component
class PasskeyWay implements MoreWaysIn {

    private static final Logger LOG = LoggerFactory.getLogger(PasskeyWay.class);

    private final PasskeyAddress address;
    private final StoredLogins logins;
    private final StoredCredentials credentials;
    private final Confirmed confirmed;
    private final CookieNames cookies;

    PasskeyWay(
            PasskeyAddress address,
            StoredLogins logins,
            StoredCredentials credentials,
            Confirmed confirmed,
            CookieNames cookies) {
        this.address = address;
        this.logins = logins;
        this.credentials = credentials;
        this.confirmed = confirmed;
        this.cookies = cookies;
    }

    @Override
    public void add(HttpSecurity http, Door door) {
        if (!address.isThere()) {
            return;
        }
        var party = new LateParty(this::party);
        var tries = new Tries(cookies);
        var asks = new PublicKeyCredentialRequestOptionsFilter(party);
        asks.setRequestOptionsRepository(tries);
        http.addFilterBefore(signIn(party, tries, door), BasicAuthenticationFilter.class)
                .addFilterAfter(new ConfirmedFirst(confirmed), AuthorizationFilter.class)
                .addFilterAfter(asks, AuthorizationFilter.class)
                .addFilterAfter(new PublicKeyCredentialCreationOptionsFilter(party), AuthorizationFilter.class)
                .addFilterAfter(registration(party), AuthorizationFilter.class);
    }

    private WebAuthnRelyingPartyOperations party() {
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

    private static WebAuthnAuthenticationFilter signIn(WebAuthnRelyingPartyOperations party, Tries tries, Door door) {
        var answer = new HttpMessageConverterAuthenticationSuccessHandler();
        answer.setRequestCache(new NullRequestCache());
        var filter = new WebAuthnAuthenticationFilter();
        filter.setAuthenticationManager(new ProviderManager(new WebAuthnAuthenticationProvider(party, door.logins())));
        filter.setRequestOptionsRepository(tries);
        filter.setSessionAuthenticationStrategy(new ChangeSessionIdAuthenticationStrategy());
        filter.setAuthenticationSuccessHandler(door.then(answer));
        filter.setAuthenticationFailureHandler((request, response, thrown) -> {
            if (thrown.getCause() instanceof DataAccessException || thrown.getCause() instanceof TransactionException) {
                // It may have been right: whoever stands behind says that the database is away.
                throw (RuntimeException) thrown.getCause();
            }
            LOG.warn(
                    "a passkey from {} was refused: {}",
                    request.getRemoteAddr(),
                    thrown.getClass().getSimpleName());
            response.setStatus(HttpServletResponse.SC_UNAUTHORIZED);
        });
        return filter;
    }

    /** Removes none: that is done on the page. */
    private WebAuthnRegistrationFilter registration(WebAuthnRelyingPartyOperations party) {
        var filter = new WebAuthnRegistrationFilter(credentials, party);
        filter.setRemoveCredentialMatcher(request -> false);
        return filter;
    }
}
