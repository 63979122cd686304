package yardlight.gateway.wire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardlight.gateway.edit.Saved;
import yardlight.gateway.page.Tongue;

/** What is wrong with a form, by the name of the field it stands beside; what has no field of its own stands at {@code form}. */
public final class Mistakes {

    /** Where what has no field is shown. */
    public static final String FORM = "form";

    private Mistakes() {}

    /**
     * @param fields those that the form has
     */
    public static Map<String, String> of(List<Saved.Mistake> mistakes, List<String> fields, Tongue tongue) {
        var found = new LinkedHashMap<String, String>();
        for (Saved.Mistake mistake : mistakes) {
            String name = mistake.field().replaceFirst("(/\\d+)+$", "").replaceFirst("^.*/", "");
            if (fields.contains(name)) {
                found.putIfAbsent(name, tongue.say("wire.wrong." + name));
            } else {
                found.putIfAbsent(
                        FORM, tongue.say("wire.wrong.form", mistake.field() + " " + tongue.say(mistake.rule())));
            }
        }
        return found;
    }
}
