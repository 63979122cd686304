package yardlight.db.passkey;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** All passkeys, and by which handle authenticators know a login. */
@Repository
public class Passkeys {

    private final PasskeyRows rows;
    private final HandleRows handles;
    private final Disk disk;

    Passkeys(PasskeyRows rows, HandleRows handles, Disk disk) {
        this.rows = rows;
        this.handles = handles;
        this.disk = disk;
    }

    public Optional<String> handle(String login) {
        return handles.findById(login).map(HandleRow::handle);
    }

    public Optional<String> login(String handle) {
        return handles.byHandle(handle).map(HandleRow::login);
    }

    /** Keeps a login's handle unless it has one; on disk when it returns. */
    public void keepHandle(String login, String handle) {
        disk.keep(() -> handles.findById(login).orElseGet(() -> handles.save(new HandleRow(login, handle))));
    }

    public Optional<Passkey> byId(String id) {
        return rows.findById(id).map(PasskeyRow::passkey);
    }

    /** Those behind a handle, oldest first. */
    public List<Passkey> of(String handle) {
        return rows.of(handle).stream().map(PasskeyRow::passkey).toList();
    }

    /** Adds it, or replaces the one with the same id; on disk when it returns. */
    public void keep(Passkey passkey) {
        disk.keep(() -> rows.save(new PasskeyRow(passkey)));
    }

    /** Removes one of those behind a handle; false when there is none. On disk when it returns. */
    public boolean remove(String id, String handle) {
        return disk.keep(() -> rows.remove(id, handle)) > 0;
    }
}
