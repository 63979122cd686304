package yardlight.gateway.signature;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The header {@code Signature-Input} (RFC 9421 4.1) with one member, in the one form that RFC 8941 4.1 gives when it is written:
 * so that what is read can be put under the signature as it stands.
 *
 * @param label by which the signature itself is found
 * @param components what is covered, in order
 * @param parameters everything behind the label, as it goes into the last line of the signature base
 * @param values the parameters by name; texts without their quotes
 */
record SignatureInput(String label, List<String> components, String parameters, Map<String, String> values) {

    static final int LONGEST = 1_000;

    private static final String NAME = "[a-z*][a-z0-9_.*-]*+";
    private static final String TEXT = "\"[ !#-\\[\\]-~]*+\"";
    private static final Pattern WHOLE =
            Pattern.compile("(" + NAME + ")=(\\(((?:" + TEXT + "(?: (?=\")|(?=\\))))*+)\\)((?:;[^;]++)*+))");
    private static final Pattern COMPONENT = Pattern.compile("\"(@?[a-z0-9!#$%&'*+.^_`|~-]++)\"");
    private static final Pattern PARAMETER = Pattern.compile(";(" + NAME + ")=(-?\\d{1,15}|" + TEXT + ")");

    static SignatureInput of(String header) throws BadSignature {
        Matcher whole = WHOLE.matcher(header);
        if (header.length() > LONGEST || !whole.matches()) {
            throw new BadSignature(
                    "Signature-Input must be one label, the covered components and the parameters, without other"
                            + " spaces, as name=(\"@method\" \"@path\");created=1764145980;keyid=\"…\";nonce=\"…\"");
        }
        return new SignatureInput(
                whole.group(1), components(whole.group(3)), whole.group(2), parameters(whole.group(4)));
    }

    private static List<String> components(String written) throws BadSignature {
        var components = new ArrayList<String>();
        for (String one : written.isEmpty() ? new String[0] : written.split(" ")) {
            Matcher component = COMPONENT.matcher(one);
            if (!component.matches()) {
                throw new BadSignature("this is not the name of a component: " + one);
            }
            components.add(component.group(1));
        }
        if (new HashSet<>(components).size() < components.size()) {
            throw new BadSignature("each component is covered once (RFC 9421 2.5)");
        }
        return List.copyOf(components);
    }

    private static Map<String, String> parameters(String written) throws BadSignature {
        var values = new LinkedHashMap<String, String>();
        Matcher next = PARAMETER.matcher(written);
        int end = 0;
        while (end < written.length() && next.find(end) && next.start() == end) {
            String value = next.group(2);
            boolean text = value.startsWith("\"");
            if (values.put(next.group(1), text ? value.substring(1, value.length() - 1) : value) != null) {
                throw new BadSignature("each parameter comes once: " + next.group(1));
            }
            end = next.end();
        }
        if (end < written.length()) {
            throw new BadSignature("a parameter of Signature-Input cannot be read");
        }
        return values;
    }

    Optional<String> text(String name) {
        return Optional.ofNullable(values.get(name));
    }

    Optional<Long> seconds(String name) throws BadSignature {
        Optional<String> value = text(name);
        if (value.filter(digits -> !digits.matches("-?\\d{1,12}")).isPresent()) {
            throw new BadSignature(name + " must be a number of seconds");
        }
        return value.map(Long::valueOf);
    }
}
