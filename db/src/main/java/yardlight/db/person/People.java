package yardlight.db.person;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import yardlight.db.columns.Column;
import yardlight.db.columns.Row;
import yardlight.db.disk.Disk;

/** Everybody who may sign in. */
@Repository
public class People {

    private static final String SELECT = "select login, password_hash, role from person";
    private static final String REPLACE = "update person set password_hash = ?, role = ? where login = ?";
    private static final String ADD = "insert into person (login, password_hash, role, created_at) values (?, ?, ?, ?)";

    private final JdbcTemplate jdbc;
    private final Disk disk;

    People(JdbcTemplate jdbc, Disk disk) {
        this.jdbc = jdbc;
        this.disk = disk;
    }

    public Optional<Person> byLogin(String login) {
        return jdbc.query(SELECT + " where login = ?", People::read, login).stream()
                .findFirst();
    }

    /** All of them, by login. */
    public List<Person> all() {
        return jdbc.query(SELECT + " order by login", People::read);
    }

    /** Adds the person, or replaces the one with the same login; on disk when it returns. */
    public void keep(Person person, Instant now) {
        disk.keep(() -> replace(person) || add(person, now));
    }

    /** Adds the person unless the login exists; on disk when it returns. */
    public boolean keepIfNew(Person person, Instant now) {
        return disk.keep(() -> byLogin(person.login()).isEmpty() && add(person, now));
    }

    private boolean replace(Person person) {
        return jdbc.update(REPLACE, person.passwordHash(), person.role().word(), person.login()) > 0;
    }

    private boolean add(Person person, Instant now) {
        return jdbc.update(
                        ADD,
                        person.login(),
                        person.passwordHash(),
                        person.role().word(),
                        Column.stored(now))
                > 0;
    }

    private static Person read(ResultSet rows, int number) throws SQLException {
        var row = new Row(rows);
        Role role = Role.valueOf(row.text("role").toUpperCase(Locale.ROOT));
        return new Person(row.text("login"), row.text("password_hash"), role);
    }
}
