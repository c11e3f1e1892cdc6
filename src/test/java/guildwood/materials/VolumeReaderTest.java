package guildwood.materials;

import static org.junit.jupiter.api.Assertions.assertEquals;

import guildwood.kernel.Range;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VolumeReaderTest {
  private static final Range ANY = new Range(0.01, 1000);

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {"4; 4", "4.5 m3; 4.5", "4,5 m³; 4.5", "800 l; 0.8", "1 yd3; 0.764555", "2 cu yd; 1.52911",
      "9 cu. ft.; 0.254852", "1 load; 8", "1.5 loads; 12"})
  void readsMetricNumbersAndUnits(String typed, double cubicMetres) {
    assertEquals(cubicMetres, new VolumeReader(false, 8).read(typed, ANY, "amount").orThrow(), 1e-5);
  }

  @ParameterizedTest
  @CsvSource({"1, 0.764555", "1 m3, 1"})
  void readsYardsForWhoeverMeasuresInThem(String typed, double cubicMetres) {
    assertEquals(cubicMetres, new VolumeReader(true, 8).read(typed, ANY, "amount").orThrow(), 1e-5);
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', value = {"-4; volume.unreadable", "four; volume.unreadable", "4 bags; volume.unreadable",
      "0; volume.out-of-scale", "1001; volume.out-of-scale", "1,000; area.comma", "''; value.missing", "1e3; volume.unreadable"})
  void refusesWhatIsNoVolume(String typed, String code) {
    assertEquals(code, new VolumeReader(false, 8).read(typed, ANY, "amount").findings().get(0).code());
  }
}
