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
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import yardlight.db.person.Device;
import yardlight.db.person.Devices;

/**
 * Remembers what people sign in with, a browser by its cookie and a program by its address. One that
 * is new is a line in the log, and stands on the owners' pages until one of them has seen it; the first one of a login is
 * expected. Where that cannot be stored the sign-in is good all the same.
 */
@Component
public class MetDevices implements KnownDevices {

    private static final Logger LOG = LoggerFactory.getLogger(MetDevices.class);
    private static final int SHOWN = 80;

    private final Devices devices;
    private final DeviceCookies cookies;
    private final DoorLog log;
    private final InstantSource clock;

    /** A script signs in with each request; it is noted once an hour. */
    private final Cache<String, Boolean> programs = Caffeine.newBuilder()
            .maximumSize(1_000)
            .expireAfterWrite(Duration.ofHours(1))
            .build();

    MetDevices(Devices devices, DeviceCookies cookies, DoorLog log, InstantSource clock) {
        this.devices = devices;
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
            meet("program", login, details.address(), details);
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
        log.say(device.login(), what);
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
