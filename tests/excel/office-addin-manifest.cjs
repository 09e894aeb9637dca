// All that office-addin-mock wants of this package; the package itself leads to one that Node 20 cannot load from jest.
module.exports = {
  OfficeApp: { Excel: "excel", OneNote: "onenote", Outlook: "outlook", PowerPoint: "powerpoint", Project: "project", Word: "word" },
};
