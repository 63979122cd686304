package yardlight.channels.http;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** XML, with placeholders in text and in attributes, and without a document type. */
record XmlBody(String template) implements Body {

    static Body of(String template) {
        Document document = read(template);
        String encoding = document.getXmlEncoding();
        if (encoding != null && !encoding.equalsIgnoreCase("UTF-8")) {
            throw new IllegalArgumentException("body must be XML in UTF-8: " + encoding);
        }
        if (escapable(document) != Placeholder.count("body", template, ANYWHERE)) {
            throw new IllegalArgumentException(
                    "body of XML must have its placeholders in text or in attributes: " + template);
        }
        return new XmlBody(template);
    }

    @Override
    public String fill(Values values) {
        return Placeholder.fill(template, values, Escapes::xml);
    }

    /** How many placeholders stand where a value can be escaped: not in comments, nor in what is taken as it stands. */
    private static int escapable(Node node) {
        int count = node.getNodeType() == Node.TEXT_NODE ? count(node) : 0;
        NamedNodeMap attributes = node.getAttributes();
        for (int i = 0; attributes != null && i < attributes.getLength(); i++) {
            count += count(attributes.item(i));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            count += escapable(child);
        }
        return count;
    }

    private static int count(Node node) {
        return Placeholder.count("body", node.getNodeValue(), ANYWHERE);
    }

    private static Document read(String template) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(template)));
        } catch (SAXException | IOException e) {
            throw new IllegalArgumentException(
                    "body must be XML without a document type (" + e.getMessage() + "): " + template, e);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML", e);
        }
    }
}
