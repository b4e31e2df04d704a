#include "exchange/platforms/qti_package.hpp"

#include "exchange/platforms/quiz_parts.hpp"

#include "exchange/platforms/xml_text.hpp"

namespace gusset {

namespace {

constexpr const char* kSchemaInstance = "http://www.w3.org/2001/XMLSchema-instance";

struct QtiNames { // what a version calls its parts
    std::string space, schema;
    std::string packageSpace, packageSchema;
    std::string package, packageVersion;
    std::string testType, itemType;
};

QtiNames qtiNames(QtiVersion version) {
    if (version == QtiVersion::Three) {
        const std::string folder = "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/";
        return {"http://www.imsglobal.org/xsd/imsqtiasi_v3p0",
                folder + "imsqti_asiv3p0_v1p0.xsd",
                "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1",
                folder + "imsqtiv3p0_imscpv1p2_v1p0.xsd",
                "QTI Package",
                "3.0.0",
                "imsqti_test_xmlv3p0",
                "imsqti_item_xmlv3p0"};
    }
    const std::string folder = "http://www.imsglobal.org/xsd/qti/qtiv2p1/";
    return {"http://www.imsglobal.org/xsd/imsqti_v2p1",
            folder + "imsqti_v2p1.xsd",
            "http://www.imsglobal.org/xsd/imscp_v1p1",
            folder + "qtiv2p1_imscpv1p2_v1p0.xsd",
            "QTIv2.1 Package",
            "1.0.0",
            "imsqti_test_xmlv2p1",
            "imsqti_item_xmlv2p1"};
}

XmlAttributes rootAttributes(const std::string& space, const std::string& schema) {
    return {{"xmlns", space},
            {"xmlns:xsi", kSchemaInstance},
            {"xsi:schemaLocation", space + " " + schema}};
}

std::string quizName(std::size_t i) { return "quiz" + std::to_string(i + 1); }
std::string itemName(std::size_t quiz, std::size_t item) {
    return quizName(quiz) + "-" + std::to_string(item + 1);
}
std::string itemPath(std::size_t quiz, std::size_t item) {
    return "items/" + itemName(quiz, item) + ".xml";
}
std::string qtiPicture(const Quiz& quiz, std::size_t i) {
    return "images/" + quizName(i) + "." + pictureEnding(quiz.picture);
}

class QtiTestWriter {
public:
    explicit QtiTestWriter(QtiVersion version) : version_(version) {}

    std::string write(const Quiz& quiz, std::size_t index) {
        const QtiNames names = qtiNames(version_);
        XmlAttributes root = rootAttributes(names.space, names.schema);
        root.emplace_back("identifier", quizName(index));
        root.emplace_back("title", onOneLine(quiz.title));
        open("assessmentTest", root);
        leaf("outcomeDeclaration",
             {{"identifier", "SCORE"}, {"cardinality", "single"}, {at("baseType"), "float"}});
        open("testPart", {{"identifier", "part1"},
                          {at("navigationMode"), "nonlinear"},
                          {at("submissionMode"), "simultaneous"}});
        open("assessmentSection",
             {{"identifier", "section1"}, {"title", onOneLine(quiz.title)}, {"visible", "true"}});
        for (std::size_t i = 0; i < quiz.items.size(); ++i) {
            leaf("assessmentItemRef",
                 {{"identifier", itemName(index, i)}, {"href", itemPath(index, i)}});
        }
        xml_.close();
        xml_.close();
        total();
        xml_.close();
        return xml_.take();
    }

private:
    std::string at(const std::string& name) const { return qtiAttribute(version_, name); }
    void open(const std::string& name, const XmlAttributes& with = {}) {
        xml_.open(qtiElement(version_, name), with);
    }
    void leaf(const std::string& name, const XmlAttributes& with) {
        xml_.leaf(qtiElement(version_, name), with);
    }

    void total() {
        open("outcomeProcessing");
        open("setOutcomeValue", {{"identifier", "SCORE"}});
        open("sum");
        leaf("testVariables", {{at("variableIdentifier"), "SCORE"}});
        xml_.close();
        xml_.close();
        xml_.close();
    }

    QtiVersion version_;
    XmlText xml_;
};

void quizResources(XmlText& xml, const QtiNames& names, const Quiz& quiz, std::size_t index) {
    const std::string test = quizName(index) + ".xml";
    xml.open("resource",
             {{"identifier", quizName(index)}, {"type", names.testType}, {"href", test}});
    xml.leaf("file", {{"href", test}});
    for (std::size_t i = 0; i < quiz.items.size(); ++i) {
        xml.leaf("dependency", {{"identifierref", itemName(index, i)}});
    }
    xml.close();
    for (std::size_t i = 0; i < quiz.items.size(); ++i) {
        xml.open("resource", {{"identifier", itemName(index, i)},
                              {"type", names.itemType},
                              {"href", itemPath(index, i)}});
        xml.leaf("file", {{"href", itemPath(index, i)}});
        if (hasPicture(quiz.picture)) {
            xml.leaf("file", {{"href", qtiPicture(quiz, index)}});
        }
        xml.close();
    }
}

std::string qtiManifest(QtiVersion version, const std::vector<Quiz>& quizzes) {
    const QtiNames names = qtiNames(version);
    XmlAttributes root = rootAttributes(names.packageSpace, names.packageSchema);
    root.emplace_back("identifier", "gusset");
    XmlText xml;
    xml.open("manifest", root);
    xml.open("metadata");
    xml.element("schema", names.package);
    xml.element("schemaversion", names.packageVersion);
    xml.close();
    xml.leaf("organizations");
    xml.open("resources");
    for (std::size_t i = 0; i < quizzes.size(); ++i) {
        quizResources(xml, names, quizzes[i], i);
    }
    xml.close();
    xml.close();
    return xml.take();
}

} // namespace

std::vector<PackedFile> qtiPackage(QtiVersion version, const std::vector<Quiz>& quizzes) {
    std::vector<PackedFile> files{{"imsmanifest.xml", qtiManifest(version, quizzes)}};
    for (std::size_t i = 0; i < quizzes.size(); ++i) {
        const Quiz& quiz = quizzes[i];
        files.push_back({quizName(i) + ".xml", QtiTestWriter(version).write(quiz, i)});
        const bool drawn = hasPicture(quiz.picture);
        const std::string picture = drawn ? "../" + qtiPicture(quiz, i) : std::string();
        for (std::size_t k = 0; k < quiz.items.size(); ++k) {
            files.push_back(
                {itemPath(i, k), qtiItem(version, quiz, quiz.items[k], {itemName(i, k), picture})});
        }
        if (drawn) {
            files.push_back({qtiPicture(quiz, i), pictureBytes(quiz.picture)});
        }
    }
    return files;
}

} // namespace gusset
