/**
 * The first page: what is in alarm now, what was said about it, and what wants attention. Start reading at
 * {@code BoardPage}. It shows and hands on one action; nothing is decided here.
 */
package yardlight.gateway.board;
