package yardlight.gateway.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import yardlight.db.person.Device;
import yardlight.db.person.Devices;
import yardlight.db.person.People;
import yardlight.db.person.Person;
import yardlight.db.person.Role;
import yardlight.escalation.Stimulus;
import yardlight.escalation.wording.SignIn;

/**
 * Remembers what people sign in with, a browser by its cookie and a program by its address. One that
 * is new is a line in the log and a text to whoever it is and to the owners, and stands on the owners' pages until one of
 * them has seen it; the first one of a login is expected. Where that cannot be stored the sign-in is good all the same.
 */
@Component
public class MetDevices implements KnownDevices {

    private static final Logger LOG = LoggerFactory.getLogger(MetDevices.class);
    private static final int SHOWN = 80;
    private static final String PROGRAM = "program";

    private final Devices devices;
    private final People people;
    private final DeviceCookies cookies;
    private final DoorLog log;
    private final InstantSource clock;

    /** A script signs in with each request; it is noted once an hour. */
    private final Cache<String, Boolean> programs = Caffeine.newBuilder()
            .maximumSize(1_000)
            .expireAfterWrite(Duration.ofHours(1))
            .build();

    MetDevices(Devices devices, People people, DeviceCookies cookies, DoorLog log, InstantSource clock) {
        this.devices = devices;
        this.people = people;
        this.cookies = cookies;
        this.log = log;
        this.clock = clock;
    }

    @Override
    public Optional<String> browser(String login, DeviceDetails details) {
        return details.cookie(login).flatMap(value -> cookies.nonce(login, value));
    }

    @Override
    public boolean cameFrom(String login, String address) {
        return devices.cameFrom(login, address);
    }

    @Override
    public void program(String login, DeviceDetails details) {
        if (programs.asMap().putIfAbsent(login + "\n" + details.address(), true) == null) {
            meet(PROGRAM, login, details.address(), details);
        }
    }

    /** Somebody has signed in by the form, or has just chosen this login: the browser is known from now on. */
    public void browser(String login, HttpServletRequest request, HttpServletResponse response) {
        var details = new DeviceDetails(request);
        String nonce = browser(login, details).orElseGet(() -> cookies.give(login, request, response));
        meet("browser", login, nonce, details);
    }

    private void meet(String way, String login, String by, DeviceDetails details) {
        Instant now = clock.instant();
        var device = new Device(
                hash(way + "\n" + login + "\n" + by), login, way, details.address(), details.agent(), now, now);
        try {
            Devices.Met met = devices.meet(device);
            if (met != Devices.Met.KNOWN) {
                tell(device, met == Devices.Met.FIRST);
            }
        } catch (DataAccessException e) {
            LOG.warn("{} signed in with a {} from {}, which could not be noted", login, way, details.address(), e);
        }
    }

    private void tell(Device device, boolean first) {
        String agent =
                device.agent().substring(0, Math.min(SHOWN, device.agent().length()));
        String what = device.login() + " signed in " + (first ? "for the first time, " : "") + "with a " + device.way()
                + (first ? "" : " that is new") + ", from " + device.address() + (agent.isEmpty() ? "" : ": " + agent);
        if (first) {
            log.say(device.login(), what);
        } else {
            var signIn = new SignIn(device.login(), device.way().equals(PROGRAM), device.address());
            log.say(new Stimulus.SignedIn(
                    signIn, people.byLogin(device.login()).map(MetDevices::contact), told(device.login()), what));
        }
    }

    /** Whoever it is about, and every owner, as far as the setup has them. */
    private Set<String> told(String login) {
        return people.all().stream()
                .filter(person -> person.login().equals(login) || person.role() == Role.OWNER)
                .map(MetDevices::contact)
                .collect(Collectors.toSet());
    }

    /** The contact that was given to the login, or else the one with the same name, if there is one. */
    private static String contact(Person person) {
        return person.contact().orElse(person.login());
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
