/**
 * What the doors for boxes have in common: the box that posts, its allowance, and how far its clock is believed. Start
 * reading at {@link yardlight.gateway.posting.PostingBox}. Has no door of its own.
 */
package yardlight.gateway.posting;
