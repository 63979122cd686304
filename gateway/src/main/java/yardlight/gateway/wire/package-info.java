/**
 * What there is to do and to see while somebody wires a box: its keys, examples to paste, and what arrives from it. Start
 * reading at {@link yardlight.gateway.wire.Posts}.
 *
 * <p>Shared by the doors of boxes, which fill it, and by the pages, which show it; knows neither.
 */
package yardlight.gateway.wire;
