package yardlight.db.person;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** What people sign in with. */
@Repository
public class Devices {

    /** What a device is to a login. */
    public enum Met {
        KNOWN,
        /** The first one that somebody signs in with: it is expected. */
        FIRST,
        NEW
    }

    private final DeviceRows rows;
    private final Disk disk;

    Devices(DeviceRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    /** Notes that somebody signed in with it, for the first time or again; on disk when it returns. */
    public Met meet(Device device) {
        try {
            return disk.keep(() -> {
                if (rows.touch(device.id(), device.address(), device.lastAt()) > 0) {
                    return Met.KNOWN;
                }
                boolean first = !rows.anyOf(device.login());
                rows.saveAndFlush(new DeviceRow(device, first ? device.firstAt() : null));
                return first ? Met.FIRST : Met.NEW;
            });
        } catch (DataIntegrityViolationException atOnce) {
            // Two requests of one program; the other one has told of it.
            return Met.KNOWN;
        }
    }

    /** Whether somebody has signed in with this login from this address. */
    public boolean cameFrom(String login, String address) {
        return rows.anyAt(login, address);
    }

    public boolean anyNew() {
        return rows.anyUnseen();
    }

    /** Those that no owner has said to know of, oldest first. */
    public List<Device> unseen() {
        return rows.unseen().stream().map(DeviceRow::device).toList();
    }

    public List<Device> of(String login) {
        return rows.of(login).stream().map(DeviceRow::device).toList();
    }

    /** An owner knows of all there are; on disk when it returns. */
    public void see(Instant now) {
        disk.keep(() -> rows.see(now));
    }

    /** When somebody last signed in, by login; those that never did are missing. */
    public Map<String, Instant> last() {
        var last = new HashMap<String, Instant>();
        rows.newestOfEach().stream()
                .map(DeviceRow::device)
                .forEach(device -> last.put(device.login(), device.lastAt()));
        return last;
    }
}
