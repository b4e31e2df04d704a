#include "model/validate/name_look.hpp"

#include "core/utf8.hpp"
#include "model/validate/characters.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace gusset {

namespace {

// Letters with a mark, each followed by the letter without it: the canonical decompositions of
// UnicodeData.txt, version 14.0, for U+00C0–024F, U+0370–052F, U+1E00–1FFF and U+3040–30FF.
struct Marked {
    char16_t mark;
    std::u16string_view pairs;
};
// clang-format off
constexpr std::array kMarked = std::to_array<Marked>({
    {0x0300,
     u"ÀAÈEÌIÒOÙUàaèeìiòoùuǛÜǜüǸNǹnЀЕЍИѐеѝиḔĒḕēṐŌṑōẀWẁwẦÂầâẰĂằăỀÊềêỒÔồôỜƠờơỪƯừưỲYỳyἂἀἃἁἊἈἋἉἒἐἓἑἚἘ"
     u"ἛἙἢἠἣἡἪἨἫἩἲἰἳἱἺἸἻἹὂὀὃὁὊὈὋὉὒὐὓὑὛὙὢὠὣὡὪὨὫὩὰαὲεὴηὶιὸοὺυὼωᾺΑῈΕῊΗ\u1FCD\u1FBFῒϊῚΙ\u1FDD\u1FFEῢϋ"
     u"ῪΥ\u1FED\u00A8ῸΟῺΩ"},
    {0x0301,
     u"ÁAÉEÍIÓOÚUÝYáaéeíióoúuýyĆCćcĹLĺlŃNńnŔRŕrŚSśsŹZźzǗÜǘüǴGǵgǺÅǻåǼÆǽæǾØǿø\u0385\u00A8ΆΑΈΕΉΗΊΙΌΟ"
     u"ΎΥΏΩΐϊάαέεήηίιΰϋόούυώωϓϒЃГЌКѓгќкḈÇḉçḖĒḗēḮÏḯïḰKḱkḾMḿmṌÕṍõṒŌṓōṔPṕpṸŨṹũẂWẃwẤÂấâẮĂắăẾÊếêỐÔốôỚƠ"
     u"ớơỨƯứưἄἀἅἁἌἈἍἉἔἐἕἑἜἘἝἙἤἠἥἡἬἨἭἩἴἰἵἱἼἸἽἹὄὀὅὁὌὈὍὉὔὐὕὑὝὙὤὠὥὡὬὨὭὩ\u1FCE\u1FBF\u1FDE\u1FFE"},
    {0x0302, u"ÂAÊEÎIÔOÛUâaêeîiôoûuĈCĉcĜGĝgĤHĥhĴJĵjŜSŝsŴWŵwŶYŷyẐZẑzẬẠậạỆẸệẹỘỌộọ"},
    {0x0303, u"ÃAÑNÕOãañnõoĨIĩiŨUũuṼVṽvẪÂẫâẴĂẵăẼEẽeỄÊễêỖÔỗôỠƠỡơỮƯữưỸYỹy"},
    {0x0304,
     u"ĀAāaĒEēeĪIīiŌOōoŪUūuǕÜǖüǞÄǟäǠȦǡȧǢÆǣæǬǪǭǫȪÖȫöȬÕȭõȰȮȱȯȲYȳyӢИӣиӮУӯуḠGḡgḸḶḹḷṜṚṝṛᾱαᾹΑῑιῙΙῡυῩΥ"},
    {0x0306, u"ĂAăaĔEĕeĞGğgĬIĭiŎOŏoŬUŭuЎУЙИйиўуӁЖӂжӐАӑаӖЕӗеḜȨḝȩẶẠặạᾰαᾸΑῐιῘΙῠυῨΥ"},
    {0x0307,
     u"ĊCċcĖEėeĠGġgİIŻZżzȦAȧaȮOȯoḂBḃbḊDḋdḞFḟfḢHḣhṀMṁmṄNṅnṖPṗpṘRṙrṠSṡsṤŚṥśṦŠṧšṨṢṩṣṪTṫtẆWẇwẊXẋxẎYẏy"
     u"ẛſ"},
    {0x0308,
     u"ÄAËEÏIÖOÜUäaëeïiöoüuÿyŸYΪΙΫΥϊιϋυϔϒЁЕЇІёеїіӒАӓаӚӘӛәӜЖӝжӞЗӟзӤИӥиӦОӧоӪӨӫөӬЭӭэӰУӱуӴЧӵчӸЫӹыḦHḧh"
     u"ṎÕṏõṺŪṻūẄWẅwẌXẍxẗt"},
    {0x0309, u"ẢAảaẨÂẩâẲĂẳăẺEẻeỂÊểêỈIỉiỎOỏoỔÔổôỞƠởơỦUủuỬƯửưỶYỷy"},
    {0x030A, u"ÅAåaŮUůuẘwẙy"},
    {0x030B, u"ŐOőoŰUűuӲУӳу"},
    {0x030C, u"ČCčcĎDďdĚEěeĽLľlŇNňnŘRřrŠSšsŤTťtŽZžzǍAǎaǏIǐiǑOǒoǓUǔuǙÜǚüǦGǧgǨKǩkǮƷǯʒǰjȞHȟh"},
    {0x030F, u"ȀAȁaȄEȅeȈIȉiȌOȍoȐRȑrȔUȕuѶѴѷѵ"},
    {0x0311, u"ȂAȃaȆEȇeȊIȋiȎOȏoȒRȓrȖUȗu"},
    {0x0313, u"ἀαἈΑἐεἘΕἠηἨΗἰιἸΙὀοὈΟὐυὠωὨΩῤρ"},
    {0x0314, u"ἁαἉΑἑεἙΕἡηἩΗἱιἹΙὁοὉΟὑυὙΥὡωὩΩῥρῬΡ"},
    {0x031B, u"ƠOơoƯUưu"},
    {0x0323,
     u"ḄBḅbḌDḍdḤHḥhḲKḳkḶLḷlṂMṃmṆNṇnṚRṛrṢSṣsṬTṭtṾVṿvẈWẉwẒZẓzẠAạaẸEẹeỊIịiỌOọoỢƠợơỤUụuỰƯựưỴYỵy"},
    {0x0324, u"ṲUṳu"},
    {0x0325, u"ḀAḁa"},
    {0x0326, u"ȘSșsȚTțt"},
    {0x0327, u"ÇCçcĢGģgĶKķkĻLļlŅNņnŖRŗrŞSşsŢTţtȨEȩeḐDḑdḨHḩh"},
    {0x0328, u"ĄAąaĘEęeĮIįiŲUųuǪOǫo"},
    {0x032D, u"ḒDḓdḘEḙeḼLḽlṊNṋnṰTṱtṶUṷu"},
    {0x032E, u"ḪHḫh"},
    {0x0330, u"ḚEḛeḬIḭiṴUṵu"},
    {0x0331, u"ḆBḇbḎDḏdḴKḵkḺLḻlṈNṉnṞRṟrṮTṯtẔZẕzẖh"},
    {0x0342, u"ἆἀἇἁἎἈἏἉἦἠἧἡἮἨἯἩἶἰἷἱἾἸἿἹὖὐὗὑὟὙὦὠὧὡὮὨὯὩᾶα\u1FC1\u00A8ῆη\u1FCF\u1FBFῖιῗϊ\u1FDF\u1FFEῦυῧϋῶω"},
    {0x0345,
     u"ᾀἀᾁἁᾂἂᾃἃᾄἄᾅἅᾆἆᾇἇᾈἈᾉἉᾊἊᾋἋᾌἌᾍἍᾎἎᾏἏᾐἠᾑἡᾒἢᾓἣᾔἤᾕἥᾖἦᾗἧᾘἨᾙἩᾚἪᾛἫᾜἬᾝἭᾞἮᾟἯᾠὠᾡὡᾢὢᾣὣᾤὤᾥὥᾦὦᾧὧᾨὨᾩὩᾪὪᾫὫᾬὬ"
     u"ᾭὭᾮὮᾯὯᾲὰᾳαᾴάᾷᾶᾼΑῂὴῃηῄήῇῆῌΗῲὼῳωῴώῷῶῼΩ"},
    {0x3099,
     u"がかぎきぐくげけごこざさじしずすぜせぞそだたぢちづつでてどとばはびひぶふべへぼほゔうゞゝガカギキグクゲケゴコザサジシズスゼセゾソダタヂチヅツデテドトバハビヒブフベヘボホヴウヷワヸヰ"
     u"ヹヱヺヲヾヽ"},
    {0x309A, u"ぱはぴひぷふぺへぽほパハピヒプフペヘポホ"},
});

// Characters that the standard makes equivalent to another (in these blocks and U+2126–212B), each
// followed by the other.
constexpr std::u16string_view kSameLook =
    u"\u0374\u02B9\u037E;\u0387\u00B7\u1F71\u03AC\u1F73\u03AD\u1F75\u03AE\u1F77\u03AF\u1F79\u03CC"
    u"\u1F7B\u03CD\u1F7D\u03CE\u1FBB\u0386\u1FBE\u03B9\u1FC9\u0388\u1FCB\u0389\u1FD3\u0390"
    u"\u1FDB\u038A\u1FE3\u03B0\u1FEB\u038E\u1FEE\u0385\u1FEF`\u1FF9\u038C\u1FFB\u038F\u1FFD\u00B4"
    u"\u2126\u03A9\u212AK\u212B\u00C5";

// Letters of Greek and Cyrillic, and the micro sign, each followed by a letter of another alphabet
// that looks the same in print. Compiled by eye; only whole letters that can't be told apart.
constexpr std::u16string_view kAlike =
    u"ΑAАAΒBВBϹCСCΕEЕEΗHНHΙIІIӀIЈJͿJΚKКKΜMМMΝNΟOОOΡPРPЅSΤTТTΧXХXΥYҮYΖZаaϲcсcеeһhіiјjϳj"
    u"οoоoрpѕsхxуyԚQԛqԜWԝwԁdГΓПΠФΦ"
    u"\u00B5\u03BC";
// clang-format on

struct Parts {
    char32_t whole;
    char32_t letter;
    char32_t mark; // 0: none
};

std::vector<Parts> sortedParts() {
    std::vector<Parts> all;
    const auto add = [&](std::u16string_view pairs, char32_t mark) {
        for (std::size_t i = 0; i + 1 < pairs.size(); i += 2) {
            all.push_back({pairs[i], pairs[i + 1], mark});
        }
    };
    for (const Marked& marked : kMarked) {
        add(marked.pairs, marked.mark);
    }
    add(kSameLook, 0);
    std::sort(all.begin(), all.end(),
              [](const Parts& a, const Parts& b) { return a.whole < b.whole; });
    return all;
}

std::optional<Parts> partsOf(char32_t code) {
    static const std::vector<Parts> kAll = sortedParts();
    const auto found =
        std::lower_bound(kAll.begin(), kAll.end(), code,
                         [](const Parts& parts, char32_t it) { return parts.whole < it; });
    return found != kAll.end() && found->whole == code ? std::optional(*found) : std::nullopt;
}

// Splits a Hangul syllable into its letters: the Unicode Standard, section 3.12.
bool addSyllable(std::u32string& out, char32_t code) {
    constexpr char32_t kFirst = 0xAC00;
    constexpr char32_t kLast = 0xD7A3;
    constexpr char32_t kVowels = 21;
    constexpr char32_t kTails = 28;
    if (code < kFirst || code > kLast) {
        return false;
    }
    const char32_t index = code - kFirst;
    out += 0x1100 + index / (kVowels * kTails);
    out += 0x1161 + index / kTails % kVowels;
    if (index % kTails != 0) {
        out += 0x11A7 + index % kTails;
    }
    return true;
}

void addParts(std::u32string& out, char32_t code) {
    if (addSyllable(out, code)) {
        return;
    }
    std::u32string marks;
    while (const std::optional<Parts> parts = partsOf(code)) {
        code = parts->letter;
        if (parts->mark != 0) {
            marks.insert(marks.begin(), parts->mark);
        }
    }
    out += code;
    out += marks;
}

// The position of a mark on its letter: marks in different positions look the same in either order.
// Canonical_Combining_Class of UnicodeData.txt for U+0300–036F; 0: not a mark.
int placeOfMark(char32_t code) {
    struct Place {
        char32_t last;
        int place;
    };
    constexpr std::array kPlaces = std::to_array<Place>({
        {0x0314, 230}, {0x0315, 232}, {0x0319, 220}, {0x031A, 232}, {0x031B, 216}, {0x0320, 220},
        {0x0322, 202}, {0x0326, 220}, {0x0328, 202}, {0x0333, 220}, {0x0338, 1},   {0x033C, 220},
        {0x0344, 230}, {0x0345, 240}, {0x0346, 230}, {0x0349, 220}, {0x034C, 230}, {0x034E, 220},
        {0x034F, 0},   {0x0352, 230}, {0x0356, 220}, {0x0357, 230}, {0x0358, 232}, {0x035A, 220},
        {0x035B, 230}, {0x035C, 233}, {0x035E, 234}, {0x035F, 233}, {0x0361, 234}, {0x0362, 233},
        {0x036F, 230},
    });
    if (code < 0x0300 || code > 0x036F) {
        return 0;
    }
    return std::find_if(kPlaces.begin(), kPlaces.end(),
                        [&](const Place& it) { return code <= it.last; })
        ->place;
}

void orderMarks(std::u32string& text) {
    const auto isMark = [](char32_t code) { return placeOfMark(code) != 0; };
    for (auto at = text.begin(); at != text.end();) {
        const auto first = std::find_if(at, text.end(), isMark);
        at = std::find_if_not(first, text.end(), isMark);
        std::stable_sort(first, at,
                         [](char32_t a, char32_t b) { return placeOfMark(a) < placeOfMark(b); });
    }
}

// The letters and marks, with single spaces between words.
std::u32string drawnParts(std::string_view name) {
    std::u32string parts;
    bool apart = false;
    for (std::string_view rest = name; !rest.empty();) {
        const Character character = firstCharacter(rest);
        rest.remove_prefix(character.bytes);
        const Visibility visibility = visibilityOf(character.code);
        if (visibility == Visibility::Blank) {
            apart = !parts.empty();
        } else if (visibility == Visibility::Seen || visibility == Visibility::Mark) {
            if (apart) {
                parts += U' ';
            }
            apart = false;
            addParts(parts, character.code);
        }
    }
    orderMarks(parts);
    return parts;
}

std::string utf8(const std::u32string& codes) {
    std::string text;
    for (const char32_t code : codes) {
        appendCharacter(text, code);
    }
    return text;
}

bool isAscii(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c > ' ' && c < 0x7F; });
}

char32_t shapeOfLetter(char32_t code) {
    constexpr char32_t kFullWidth = 0xFF01; // U+FF01–FF5E are full-width ASCII
    if (code >= kFullWidth && code <= 0xFF5E) {
        return code - kFullWidth + U'!';
    }
    for (std::size_t i = 0; i + 1 < kAlike.size(); i += 2) {
        if (kAlike[i] == code) {
            return kAlike[i + 1];
        }
    }
    return code;
}

} // namespace

std::string lookOf(std::string_view name) {
    return isAscii(name) ? std::string(name) : utf8(drawnParts(name));
}

std::string shapeOf(std::string_view name) {
    if (isAscii(name)) {
        return std::string(name);
    }
    std::u32string parts = drawnParts(name);
    std::transform(parts.begin(), parts.end(), parts.begin(), shapeOfLetter);
    return utf8(parts);
}

} // namespace gusset
