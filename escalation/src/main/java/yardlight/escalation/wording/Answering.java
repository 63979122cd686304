package yardlight.escalation.wording;

import java.util.Optional;

/**
 * How the reader of a text can answer it.
 *
 * @param code the callout's code; empty when the text is about several callouts, which are answered with ALL
 * @param link the address of the answer page
 */
public record Answering(Optional<Integer> code, Optional<String> link) {}
