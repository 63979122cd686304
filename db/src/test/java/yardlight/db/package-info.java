/** Tests that need a database run on H2 and on PostgreSQL alike; {@link yardlight.db.TestDatabase} makes one. */
package yardlight.db;
