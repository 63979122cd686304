package yardlight.db.passkey;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

@Entity
@Table(name = "passkey_handle")
class HandleRow {

    @Id
    private String login;

    private String handle;

    HandleRow() {}

    HandleRow(String login, String handle) {
        this.login = login;
        this.handle = handle;
    }

    String login() {
        return login;
    }

    String handle() {
        return handle;
    }
}
