/**
 * The page of one alarm: how it stands, what happened in order, and what may be done. Start reading at {@code StoryPage}.
 * What may be done is asked of the engine's rules; nothing about states stands here.
 */
package yardlight.gateway.story;
