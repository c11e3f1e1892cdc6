package guildwood.species.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import guildwood.species.names.ScientificName.Reserve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Forms of names of the International Code of Nomenclature for algae, fungi, and plants. The hybrid forms
 * (Art. H.1 to H.3: Agrostis stolonifera × Polypogon monspeliensis, × Agropogon littoralis, Salix aurita L. × S. caprea L.,
 * Mentha × smithiana, Polypodium vulgare nothosubsp. mantoniae, nothospecies) were read in the TDWG list's discussion of
 * the Code's chapter H by one of its editors and in a reprint of the Shenzhen Code's chapter; the author forms are those of
 * the names in the USDA PLANTS table.
 */
class NameReaderReferenceCheck {
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "Fraxinus americana L. | Fraxinus americana",
      "Abies amabilis (Douglas ex Loudon) Douglas ex Forbes | Abies amabilis",
      "Abies concolor (Gord. & Glend.) Lindl. ex Hildebr. | Abies concolor",
      "Achillea millefolium L. var. occidentalis DC. | Achillea millefolium var. occidentalis",
      "Acer saccharum Marshall ssp. nigrum (F.Michx.) Desmarais | Acer saccharum subsp. nigrum",
      "Acer rubrum L. f. tomentosum (Tausch) Siebert & Voss | Acer rubrum f. tomentosum",
      "Carex rostrata L. f. | Carex rostrata",
      "Salix alba L. fil. | Salix alba",
      "Aster novae-angliae L. | Aster novae-angliae",
      "Urtica dioica L. subsp. gracilis (Aiton) Seland. var. procera (Muhl. ex Willd.) Wedd. | Urtica dioica subsp. gracilis var. procera",
      "Viola tricolor arvensis | Viola tricolor arvensis",
      "Betula pendula auct. non Roth | Betula pendula",
      "Picea glauca de Vries | Picea glauca",
      "Quercus × bebbiana C.K.Schneid. | Quercus × bebbiana",
      "Quercus xbebbiana | Quercus xbebbiana",
      "Mentha ×smithiana R.Graham | Mentha × smithiana",
      "Mentha x smithiana | Mentha × smithiana",
      "×Agropogon littoralis | × Agropogon littoralis",
      "x Agropogon littoralis | × Agropogon littoralis",
      "xAgropogon littoralis | × Agropogon littoralis",
      "Polypodium vulgare nothosubsp. mantoniae (Rothm.) Schidlay | Polypodium vulgare nothosubsp. mantoniae",
      "Salix aurita L. × S. caprea L. | Salix aurita L. × S. caprea L.",
      "Agrostis stolonifera × Polypogon monspeliensis | Agrostis stolonifera × Polypogon monspeliensis",
      "Malus domestica 'Bramley''s Seedling' | Malus domestica 'Bramley''s Seedling'",
      "Malus domestica Borkh. cv. Gravenstein | Malus domestica 'Gravenstein'",
      "Rosa ‘Harison’s Yellow’ | Rosa 'Harison’s Yellow'",
      "Brassica oleracea Capitata Group | Brassica oleracea Capitata Group",
      "ACER RUBRUM VAR. TRILOBUM | Acer rubrum var. trilobum",
      "acer rubrum | Acer rubrum",
      "Acer_rubrum | Acer rubrum",
      "Acer.rubrum | Acer rubrum",
      "  Acer   rubrum  L. | Acer rubrum"})
  void readsTheFormsOfTheCode(String written, String canonical) {
    assertEquals(canonical, NameReader.read(written).orThrow().canonical());
  }

  @ParameterizedTest
  @CsvSource({
      "Carex sp., SPECIES_OPEN", "Salix spp., SPECIES_OPEN", "Salix cf. caprea, UNCERTAIN", "Viola aff. riviniana, UNCERTAIN",
      "Rosa canina agg., WIDE", "Rubus fruticosus L. s.l., WIDE", "Rubus fruticosus sensu lato, WIDE",
      "Festuca ovina s. str., NARROW", "Acer rubrum L., NONE"})
  void keepsWhatTheWriterLeftOpen(String written, Reserve reserve) {
    assertEquals(reserve, NameReader.read(written).orThrow().reserve());
  }

  @Test
  void keepsTheAuthorsAsWritten() {
    assertEquals("(L.) Gaertn.", NameReader.read("Alnus glutinosa (L.) Gaertn.").orThrow().authors());
    assertEquals("Torr. & A.Gray ex Hook.", NameReader.read("Aster alpinus Torr. & A.Gray ex Hook.").orThrow().authors());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "123", "?", "--", "(L.) Mill."})
  void refusesWhatCannotBeAName(String written) {
    assertTrue(NameReader.read(written).isRefused());
  }

  @ParameterizedTest
  @ValueSource(strings = {"×", "x", "Acer ×", "Acer × ", "'", "Acer '", "A. b", "Acer subsp.", "Acer rubrum var.", "× ×",
      "Acer rubrum ((((", "Acer Group", "Ácer rúbrum", "\u0000\u0001", "Acer rubrum 'x"})
  void neverFailsOnOddText(String written) {
    NameReader.read(written);
  }
}
