/**
 * The pages of the boxes: all of them, and each with what it posted last, its keys, its heartbeat, and what arrives from it
 * while somebody wires it. Start reading at {@code BoxPage}.
 *
 * <p>What a good box is stands in the reader of the setup; how a key is made, behind {@link yardlight.gateway.wire.Keys}.
 */
package yardlight.gateway.boxsheet;
