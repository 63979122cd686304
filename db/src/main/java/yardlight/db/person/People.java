package yardlight.db.person;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Repository;
import yardlight.db.disk.Disk;

/** Everybody who may sign in. */
@Repository
public class People {

    private final PersonRows rows;
    private final Disk disk;

    People(PersonRows rows, Disk disk) {
        this.rows = rows;
        this.disk = disk;
    }

    public Optional<Person> byLogin(String login) {
        return rows.findById(login).map(PersonRow::person);
    }

    /** All of them, by login. */
    public List<Person> all() {
        return rows.findAll().stream()
                .map(PersonRow::person)
                .sorted(Comparator.comparing(Person::login))
                .toList();
    }

    /** Adds the person, or replaces the one with the same login; on disk when it returns. */
    public void keep(Person person, Instant now) {
        disk.keep(() -> rows.save(new PersonRow(person, now)));
    }

    /**
     * Adds the person unless the login exists, and says whether it did; on disk when it returns.
     *
     * @param before is run when it does not exist, and before anything of it is kept
     */
    public boolean keepIfNew(Person person, Instant now, Runnable before) {
        return disk.keep(() -> {
            boolean missing = !rows.existsById(person.login());
            if (missing) {
                rows.saveAndFlush(new PersonRow(person, now));
                before.run();
            }
            return missing;
        });
    }
}
