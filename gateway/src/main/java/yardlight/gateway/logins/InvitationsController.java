package yardlight.gateway.logins;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.security.Principal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import yardlight.db.person.Role;
import yardlight.gateway.document.Body;
import yardlight.gateway.document.Document;
import yardlight.gateway.document.Faults;
import yardlight.gateway.document.Fields;

/** The owner invites people. The link is shown once, when the invitation is made. */
@RestController
@RequestMapping(path = "/api/v1/invitations", produces = MediaType.APPLICATION_JSON_VALUE)
class InvitationsController {

    private final Inviting inviting;
    private final Wishes wishes;

    InvitationsController(Inviting inviting, Wishes wishes) {
        this.inviting = inviting;
        this.wishes = wishes;
    }

    /** An open invitation without its link. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    record OpenInvitation(
            String id, String role, Optional<String> contact, String by, Instant invitedAt, Instant expiresAt) {}

    private record Wish(Role role, Optional<String> contact) {}

    @GetMapping
    List<OpenInvitation> list() {
        return inviting.open().stream()
                .map(one -> new OpenInvitation(
                        one.id(), one.role().word(), one.contact(), one.by(), one.invitedAt(), one.expiresAt()))
                .toList();
    }

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    Inviting.MadeInvitation invite(HttpServletRequest request, Principal by) throws IOException {
        Wish wish = wish(Body.json(request));
        String here = ServletUriComponentsBuilder.fromContextPath(request).toUriString();
        return inviting.invite(wish.role(), wish.contact(), by.getName(), here);
    }

    @DeleteMapping("/{id}")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void takeBack(@PathVariable String id, Principal by) {
        inviting.takeBack(id, by.getName());
    }

    private Wish wish(Document document) {
        var faults = new Faults();
        faults.addAll(document.faults());
        Fields fields = document.fields(faults).needs("role");
        Optional<Role> role = wishes.role(fields);
        Optional<String> contact = wishes.contact(fields);
        fields.nothingElse();
        faults.orNothing();
        return new Wish(role.orElseThrow(), contact);
    }
}
