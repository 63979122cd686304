package yardlight.gateway.evidence;

import java.util.List;

/**
 * The proof that the log of so many lines is the beginning of a longer one, in the terms of RFC 6962.
 *
 * @param proof hashes in hexadecimal
 */
record ConsistencyView(long first, long second, List<String> proof) {}
