/**
 * Keeps what the engine decided: tables, their migrations, and one package for each thing that is read or written.
 * Start reading at {@code db/migration/common/V1__the_record.sql}, then {@code journal}.
 *
 * <p>Nothing here knows HTTP, channels, threads or the clock: every instant is handed in.
 */
package yardlight.db;
