package yardlight.gateway.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import yardlight.channels.Attachment;
import yardlight.db.reading.Sample;
import yardlight.gateway.page.Clockface;
import yardlight.gateway.strip.Limit;
import yardlight.gateway.strip.Stretch;

/** Our pictures, read by the JDK's own reader of PNG, which shares nothing with the writer. */
class PngAgainstTest {

    private static final Instant NOW = Instant.parse("2026-11-25T08:13:00Z");
    private static final Instant BEGAN = NOW.minusSeconds(600);
    private static final Stretch HOUR = new Stretch(NOW.minusSeconds(3600), NOW);
    private static final Clockface CLOCK = new Clockface(ZoneId.of("America/Chicago"), NOW, Locale.ENGLISH);

    private static BufferedImage read(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static List<Sample> samples(int count, double noise) {
        var random = new Random(5);
        var samples = new ArrayList<Sample>();
        for (int i = 0; i < count; i++) {
            double mean = 14 + 4.0 * i / count + noise * random.nextGaussian();
            double half = noise * random.nextDouble();
            samples.add(new Sample(HOUR.from().plusMillis(3_600_000L * i / count), mean - half, mean + half, mean, 3));
        }
        return samples;
    }

    private static byte[] drawn(List<Sample> samples) {
        return Drawing.of(HOUR, samples, List.of(new Limit("high-high", 18, true)), BEGAN, CLOCK)
                .png();
    }

    @Test
    void every_dot_comes_back_as_it_was_drawn() throws IOException {
        var canvas = new Canvas(40, 30, 0xfbf9f3);
        canvas.line(3, 4, 35, 25, 2.5, 0xa3281c);
        Strokes.write(canvas, "18.4", 5, 10, 9, 0x20282d);

        BufferedImage image = read(Png.of(canvas));

        for (int y = 0; y < canvas.height(); y++) {
            for (int x = 0; x < canvas.width(); x++) {
                assertThat(image.getRGB(x, y) & 0xffffff).as(x + ", " + y).isEqualTo(canvas.dot(x, y));
            }
        }
    }

    @Test
    void a_curve_is_ink_and_the_beginning_of_its_alarm_red() throws IOException {
        BufferedImage image = read(drawn(samples(60, 0.05)));

        assertThat(image.getWidth()).isEqualTo(600);
        assertThat(count(image, 0x20282d)).isGreaterThan(500);
        assertThat(count(image, 0xa3281c)).isGreaterThan(200);
    }

    /** 500 places with a band as ragged as can be. */
    @Test
    void is_small_also_where_the_curve_is_all_noise() {
        assertThat(drawn(samples(500, 1.5)).length).isLessThan(Attachment.MOST_BYTES);
        assertThat(drawn(samples(60, 0.05)).length).isLessThan(20_000);
    }

    @Test
    void a_curve_that_does_not_move_and_a_single_reading_are_drawn_too() throws IOException {
        assertThat(count(read(drawn(samples(60, 0))), 0x20282d)).isPositive();
        assertThat(read(drawn(List.of(Sample.one(BEGAN, 14)))).getHeight()).isEqualTo(300);
    }

    @Test
    void every_character_of_times_and_figures_has_strokes() {
        for (char one : "0123456789.:-AMP".toCharArray()) {
            var canvas = new Canvas(20, 20, 0xffffff);
            Strokes.write(canvas, String.valueOf(one), 4, 4, 12, 0);

            int inked = 0;
            for (int place = 0; place < 400; place++) {
                inked += canvas.dot(place % 20, place / 20) == 0xffffff ? 0 : 1;
            }
            assertThat(inked).as(String.valueOf(one)).isPositive();
        }
    }

    private static long count(BufferedImage image, int colour) {
        long count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += (image.getRGB(x, y) & 0xffffff) == colour ? 1 : 0;
            }
        }
        return count;
    }
}
