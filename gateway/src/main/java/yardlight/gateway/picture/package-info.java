/**
 * The picture of a curve that goes along with a mail: drawn dot by dot, without the machine's fonts and without a window
 * system's library. Start reading at {@link yardlight.gateway.picture.Pictures}.
 */
package yardlight.gateway.picture;
