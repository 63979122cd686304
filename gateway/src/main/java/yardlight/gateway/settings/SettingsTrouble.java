package yardlight.gateway.settings;

/** The gateway cannot start with these properties. The message is a sentence with the property, the rule and the value. */
public final class SettingsTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private static final String CHANNELS = "docs/channels.md";

    private final String page;

    /**
     * @param prefix of the properties, with its last dot
     * @param complaint in a sentence that begins with the rest of the property's name
     */
    public SettingsTrouble(String prefix, IllegalArgumentException complaint) {
        this(prefix, complaint, CHANNELS);
    }

    /** @param page the one that has these properties, when it is not that of the channels */
    public SettingsTrouble(String prefix, IllegalArgumentException complaint, String page) {
        super(prefix + complaint.getMessage(), complaint);
        this.page = page;
    }

    String page() {
        return page;
    }
}
