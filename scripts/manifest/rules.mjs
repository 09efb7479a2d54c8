// What the platform's reference asks of an add-in manifest of a task pane with a shared runtime, as far as this
// manifest uses it. The host's own readers are silent about most of it.

/** Children in their order. `!`: must be there; `*`: may be repeated. */
export const children = {
  OfficeApp: [
    'Id!',
    'AlternateId',
    'Version!',
    'ProviderName!',
    'DefaultLocale!',
    'DisplayName!',
    'Description!',
    'IconUrl!',
    'HighResolutionIconUrl!',
    'SupportUrl!',
    'AppDomains',
    'Hosts!',
    'Requirements!',
    'DefaultSettings!',
    'Permissions!',
    'VersionOverrides!',
  ],
  VersionOverrides: ['Description', 'Requirements', 'Hosts!', 'Resources!'],
  'VersionOverrides/Hosts/Host': ['Runtimes!', 'AllFormFactors!', 'DesktopFormFactor!'],
  Runtimes: ['Runtime!'],
  AllFormFactors: ['ExtensionPoint!'],
  DesktopFormFactor: ['GetStarted', 'FunctionFile!', 'ExtensionPoint!*'],
  'AllFormFactors/ExtensionPoint': ['Script!', 'Page!', 'Metadata!', 'Namespace!'],
  'DesktopFormFactor/ExtensionPoint': ['OfficeTab!'],
  OfficeTab: ['Group!*'],
  Group: ['Label!', 'Icon!', 'Control!*'],
  Control: ['Label!', 'Supertip!', 'Icon!', 'Action!'],
  Supertip: ['Title!', 'Description!'],
  Action: ['TaskpaneId', 'SourceLocation!', 'Title'],
  GetStarted: ['Title!', 'Description!', 'LearnMoreUrl!'],
  Icon: ['Image!*'],
  Resources: ['Images!', 'Urls!', 'ShortStrings!', 'LongStrings!'],
};

/** Greatest length of texts, by element. */
export const longestText = { ProviderName: 125, DisplayName: 125, Description: 250, Namespace: 32 };
/** Greatest length of the strings in the resources, by their list. */
export const longestString = { ShortStrings: 125, LongStrings: 250 };
export const longestResourceId = 32;
export const longestAddress = 2048;
/** The kind of resource each element that names one needs. */
export const resourceKind = {
  Runtime: 'Urls',
  SourceLocation: 'Urls',
  FunctionFile: 'Urls',
  LearnMoreUrl: 'Urls',
  Image: 'Images',
  Namespace: 'ShortStrings',
  Label: 'ShortStrings',
  Title: 'ShortStrings',
  Description: 'LongStrings',
};
/** The resource of the page that all three share. */
export const sharedPage = {
  Runtime: 'Runtimes > Runtime',
  Page: 'ExtensionPoint > Page > SourceLocation',
  FunctionFile: 'DesktopFormFactor > FunctionFile',
};
export const iconSizes = ['16', '32', '80'];
