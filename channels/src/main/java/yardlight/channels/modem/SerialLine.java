package yardlight.channels.modem;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;

/**
 * The serial port, open. For one thread.
 *
 * <p>The library closes a port by itself when the system says that the device is gone, and from then on answers -1. What its
 * number for an error means is the system's: those of POSIX are put into words.
 */
final class SerialLine implements AutoCloseable {

    /** As long as a read waits for something to come; the system counts in tenths of a second. */
    private static final int WAIT_MS = 100;

    private static final int DATA_BITS = 8;

    private static final int ENOENT = 2;
    private static final int EACCES = 13;
    private static final int EBUSY = 16;

    private final SerialPort port;
    private final String name;

    private SerialLine(SerialPort port, String name) {
        this.port = port;
        this.name = name;
    }

    static SerialLine open(String name, int speed) throws Gone {
        try {
            SerialPort port = SerialPort.getCommPort(name);
            port.setComPortParameters(speed, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, WAIT_MS, 0);
            if (!port.openPort()) {
                throw new Gone(name + " " + words(port.getLastErrorCode()));
            }
            return new SerialLine(port, name);
        } catch (SerialPortInvalidPortException e) {
            throw new Gone("there is no port " + name, e);
        } catch (LinkageError e) {
            throw new Gone("this machine lets no serial port be used: " + e.getMessage(), e);
        }
    }

    private static String words(int error) {
        return switch (error) {
            case ENOENT -> "is not there";
            case EACCES -> "may not be used by the gateway's user, who as a rule must be in the group dialout";
            case EBUSY -> "is used by another program";
            default -> "cannot be opened (error " + error + ")";
        };
    }

    /** Waits for a tenth of a second at most. How many octets there were; 0 if none came. */
    int read(byte[] octets) throws Gone {
        int count = port.readBytes(octets, octets.length);
        if (count < 0) {
            throw gone();
        }
        return count;
    }

    /** Whether a read would come back at once with something. */
    boolean isWaiting() throws Gone {
        int count = port.bytesAvailable();
        if (count < 0) {
            throw gone();
        }
        return count > 0;
    }

    void write(byte[] octets) throws Gone {
        if (port.writeBytes(octets, octets.length) != octets.length) {
            throw gone();
        }
    }

    private Gone gone() {
        return new Gone(name + " is gone");
    }

    @Override
    public void close() {
        port.closePort();
    }
}
