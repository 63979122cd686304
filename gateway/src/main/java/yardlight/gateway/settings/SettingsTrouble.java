package yardlight.gateway.settings;

/** The gateway cannot start with these properties. The message is a sentence with the property, the rule and the value. */
public final class SettingsTrouble extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * @param prefix of the properties, with its last dot
     * @param complaint in a sentence that begins with the rest of the property's name
     */
    public SettingsTrouble(String prefix, IllegalArgumentException complaint) {
        super(prefix + complaint.getMessage(), complaint);
    }
}
