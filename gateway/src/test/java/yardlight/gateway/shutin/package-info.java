/** A site is asked to shut in, with the whole gateway. */
package yardlight.gateway.shutin;
