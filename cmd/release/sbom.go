package main

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"time"
)

// The parts of a document of SPDX 2.3 that are used here.
type (
	spdxDocument struct {
		Version       string         `json:"spdxVersion"`
		DataLicense   string         `json:"dataLicense"`
		ID            string         `json:"SPDXID"`
		Name          string         `json:"name"`
		Namespace     string         `json:"documentNamespace"`
		Creation      spdxCreation   `json:"creationInfo"`
		Packages      []spdxPackage  `json:"packages"`
		Relationships []spdxRelation `json:"relationships"`
	}
	spdxCreation struct {
		Created  string   `json:"created"`
		Creators []string `json:"creators"`
	}
	spdxPackage struct {
		Name      string         `json:"name"`
		ID        string         `json:"SPDXID"`
		Version   string         `json:"versionInfo"`
		Download  string         `json:"downloadLocation"`
		Analyzed  bool           `json:"filesAnalyzed"`
		Concluded string         `json:"licenseConcluded"`
		Declared  string         `json:"licenseDeclared"`
		Copyright string         `json:"copyrightText"`
		Purpose   string         `json:"primaryPackagePurpose,omitempty"`
		Checksums []spdxChecksum `json:"checksums,omitempty"`
		External  []spdxExternal `json:"externalRefs,omitempty"`
	}
	spdxChecksum struct {
		Algorithm string `json:"algorithm"`
		Value     string `json:"checksumValue"`
	}
	spdxExternal struct {
		Category string `json:"referenceCategory"`
		Type     string `json:"referenceType"`
		Locator  string `json:"referenceLocator"`
	}
	spdxRelation struct {
		From string `json:"spdxElementId"`
		Kind string `json:"relationshipType"`
		To   string `json:"relatedSpdxElement"`
	}
)

const unsaid = "NOASSERTION" // SPDX's word for what is not said

// bill returns what a program consists of as a document of SPDX 2.3 in JSON. Its time is
// that of the sources, and its name comes from the program's bytes, so that the same
// sources give the same document.
func bill(stem string, program []byte, made time.Time, parts []part) ([]byte, error) {
	sum := sha256.Sum256(program)
	doc := spdxDocument{
		Version: "SPDX-2.3", DataLicense: "CC0-1.0", ID: "SPDXRef-DOCUMENT", Name: stem, Namespace: "urn:uuid:" + uuid(sum),
		Creation: spdxCreation{made.UTC().Format(time.RFC3339), []string{"Tool: slingloft-release"}},
		Packages: []spdxPackage{{
			Name: "slingloft", ID: "SPDXRef-slingloft", Version: stem, Download: unsaid, Concluded: "MIT", Declared: "MIT",
			Copyright: "Copyright (c) 2026 Slingloft contributors", Purpose: "APPLICATION",
			Checksums: []spdxChecksum{{"SHA256", fmt.Sprintf("%x", sum)}},
		}},
		Relationships: []spdxRelation{{"SPDXRef-DOCUMENT", "DESCRIBES", "SPDXRef-slingloft"}},
	}
	for i, p := range parts {
		id := fmt.Sprintf("SPDXRef-part-%d", i+1)
		doc.Packages = append(doc.Packages, spdxPackage{
			Name: p.path, ID: id, Version: p.version, Download: unsaid, Concluded: p.spdx, Declared: unsaid, Copyright: unsaid, Purpose: "LIBRARY",
			External: []spdxExternal{{"PACKAGE-MANAGER", "purl", "pkg:golang/" + p.path + "@" + p.version}},
		})
		doc.Relationships = append(doc.Relationships, spdxRelation{"SPDXRef-slingloft", "STATIC_LINK", id})
	}
	out, err := json.MarshalIndent(doc, "", "  ")
	return append(out, '\n'), err
}

// uuid forms a UUID of version 8 (RFC 9562) from a digest.
func uuid(sum [sha256.Size]byte) string {
	b := sum[:16]
	b[6], b[8] = b[6]&0x0f|0x80, b[8]&0x3f|0x80
	return fmt.Sprintf("%x-%x-%x-%x-%x", b[:4], b[4:6], b[6:8], b[8:10], b[10:])
}
