package yardlight.gateway.problem;

import java.util.Map;
import yardlight.escalation.sentence.Sentence;

/**
 * One thing that is wrong in a request.
 *
 * @param where {@code pointer} (RFC 6901, as a fragment: {@code #/3/state}) or {@code parameter} (of the query)
 * @param place the pointer, or the name of the parameter
 * @param rule what would be right, such as {@code must be active or normal}
 */
public record Fault(String where, String place, Sentence rule) {

    /** The rule in English. */
    public String detail() {
        return rule.english();
    }

    public static Fault at(String pointer, String detail) {
        return at(pointer, Sentence.plain(detail));
    }

    /** With a rule that other languages have words for. */
    public static Fault at(String pointer, Sentence rule) {
        return new Fault("pointer", pointer, rule);
    }

    public static Fault inQuery(String parameter, String detail) {
        return new Fault("parameter", parameter, Sentence.plain(detail));
    }

    /** As the contract shows it: {@code {"detail": …, "pointer": …}}. */
    public Map<String, String> members() {
        var members = new java.util.LinkedHashMap<String, String>();
        members.put("detail", detail());
        members.put(where, place);
        return members;
    }
}
